import { Button } from '../ui/button.js';
import { Section } from '../ui/page.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { AcceptRepair } from './accept-repair.js';
import { AnswerAsk } from './answer-ask.js';
import { Dispose, isDisposable } from './dispose.js';
import { InspectRework } from './inspect-rework.js';

interface DecideProps {
  readonly about: string;
  readonly act: string;
  readonly name: string;
  readonly onClose: () => void;
}

/** The one thing that is opened: what is to be said of it. */
export const Decide = ({ about, act, name, onClose }: DecideProps) => {
  const { t } = useWords();
  return (
    <div className="opened">
      <Section name={t('quality.decide')}>
        <p className="lead">
          <Said text={name} />
        </p>
        {isDisposable(act) ? <Dispose of={act} about={about} /> : null}
        {act === 'answer' ? <AnswerAsk defect={about} /> : null}
        {act === 'acceptance' ? <AcceptRepair repair={about} /> : null}
        {act === 'rework' ? <InspectRework disposition={about} /> : null}
        <Button onPress={onClose}>{t('quality.close')}</Button>
      </Section>
    </div>
  );
};
