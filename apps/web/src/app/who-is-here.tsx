import { useMutation, useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { act } from '../api/ask.js';
import { sessionQuery } from '../api/queries.js';
import { useArrival } from '../sign-in/use-arrival.js';
import { Button } from '../ui/button.js';
import { useWords } from '../words/use-words.js';

/** Who is signed in here, with the way out; or the way in. */
export const WhoIsHere = () => {
  const { t } = useWords();
  const { data } = useQuery(sessionQuery);
  const arrive = useArrival();
  const leaving = useMutation({
    mutationFn: () => act('/api/sign-out', {}),
    onSuccess: (view) => arrive(view, '/sign-in'),
  });
  if (!data) return null;
  if (!data.person) return <Link to="/sign-in">{t('app.signIn')}</Link>;
  return (
    <span className="here">
      <span title={data.person.roles.join(', ')}>
        <span className="n">{data.person.badge}</span>
        {data.device === null ? null : <span className="soft"> {data.device}</span>}
      </span>
      <Button onPress={() => leaving.mutate()} busy={leaving.isPending}>
        {t('app.signOut')}
      </Button>
    </span>
  );
};
