import { Link } from '@tanstack/react-router';
import { Empty, Page } from '../ui/page.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** Said at an address that leads nowhere. */
export const NoPage = () => {
  const { t } = useWords();
  return (
    <Page title={t('app.noPage')} name={t('app.noPage')}>
      <Empty>
        <Text
          of="app.noPageHelp"
          with={{
            start: (inside) => <Link to="/">{inside}</Link>,
            search: (inside) => <Link to="/search">{inside}</Link>,
          }}
        />
      </Empty>
    </Page>
  );
};
