import { CAUTIONS, type CautionedWork } from '@hull-record/trade';
import { Fold } from '../ui/fold.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const WORK = ['repair', 'grinding', 'mixing', 'laminating'] as const satisfies readonly CautionedWork[];

/** The cautions of a repair: in short for everybody who stands there, in full one touch away. */
export const WorkCautions = () => {
  const { t } = useWords();
  return (
    <section className="caution-box">
      <h2>{t('bay.cautions')}</h2>
      <p>{t('bay.caution.short')}</p>
      <p>
        <b>{t('bay.caution.neverMix')}</b>
      </p>
      <Fold summary={t('bay.caution.full')}>
        {WORK.map((work) => (
          <div key={work}>
            <h3>{t(`bay.caution.${work}`)}</h3>
            <ul>
              {CAUTIONS[work].map((caution) => (
                <li key={caution}>
                  <Said text={caution} />
                </li>
              ))}
            </ul>
          </div>
        ))}
      </Fold>
    </section>
  );
};
