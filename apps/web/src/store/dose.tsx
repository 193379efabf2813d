import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { DoseView } from '@hull-record/contracts';
import type { GetAnswer } from '../api/contract.js';
import { doseQuery } from '../api/queries-of-store.js';
import { Answer } from '../asked/answer.js';
import { FilterForm } from '../asked/filter-form.js';
import { decimal } from '../entry/entry-field.js';
import { mark } from '../marks/mark.js';
import { Facts } from '../ui/page.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const NOTHING = { resin: '', catalyst: '', resinKg: '', temperature: '', unit: 'C' };
const CATALYSED = ['resin', 'gel coat', 'putty', 'bonding paste'];

/** How much catalyst a mix takes at a temperature, by the data sheet, with the window it is judged by. */
export const Dose = ({ materials }: { readonly materials: GetAnswer<'/api/materials'> }) => {
  const { t } = useWords();
  const [asked, setAsked] = useState(NOTHING);
  const { resin, catalyst, resinKg, temperature, unit } = asked;
  const query = useQuery(
    doseQuery(resin, { catalyst, resinKg: decimal(resinKg), temperature: decimal(temperature), unit: unit || 'C' }),
  );
  const named = (roles: readonly string[]) =>
    materials.filter(({ role }) => roles.includes(role)).map(({ code, name }) => [code, name] as const);
  return (
    <>
      <FilterForm
        button={t('store.doseDo')}
        fields={[
          {
            name: 'resin',
            label: t('store.resin'),
            kind: 'choice',
            options: named(CATALYSED),
            none: t('entry.choose'),
          },
          {
            name: 'catalyst',
            label: t('store.catalyst'),
            kind: 'choice',
            options: named(['catalyst']),
            none: t('entry.choose'),
          },
          { name: 'resinKg', label: t('store.resinKg'), kind: 'text', pointer: '/resinKg' },
          { name: 'temperature', label: t('store.temperature'), kind: 'text', pointer: '/temperature' },
          { name: 'unit', label: t('entry.unit'), kind: 'choice', options: [['F', '°F']], none: '°C' },
        ]}
        values={asked}
        onChosen={(chosen) => setAsked({ ...chosen, unit: chosen.unit || 'C' })}
        error={query.error}
      />
      {query.fetchStatus === 'idle' && query.data === undefined && query.error === null ? (
        <p className="soft">{t('store.doseHelp')}</p>
      ) : (
        <Answer what={t('store.theDose')} query={query}>
          {(dose) => <DoseFigures dose={dose} />}
        </Answer>
      )}
    </>
  );
};

const DoseFigures = ({ dose }: { readonly dose: DoseView }) => {
  const { t, figure } = useWords();
  return (
    <div role="status">
      <p className="verdict">
        {dose.stop === null
          ? mark(dose.verdict === 'inside' ? 'inside' : 'near', <Term word={dose.verdict} />)
          : mark('stopped', <Said text={dose.stop} />)}
      </p>
      <Facts
        rows={[
          [t('store.grams'), `${figure(dose.grams, 4)} g`],
          [
            t('store.millilitres'),
            dose.millilitres === null ? t('record.notKnown') : `${figure(dose.millilitres, 4)} mL`,
          ],
          [t('store.percentByMass'), `${figure(dose.percentByMass, 4)} %`],
          [
            t('store.window'),
            dose.window === null
              ? t('record.notKnown')
              : t('app.limitBetween', {
                  min: figure(dose.window.minPercent, 4),
                  max: figure(dose.window.maxPercent, 4),
                  unit: '%',
                }),
          ],
        ]}
      />
      <p className="note soft">
        <Said text={dose.source} />
      </p>
      <ul className="plain">
        {dose.cautions.map((caution) => (
          <li key={caution} className="note">
            <Said text={caution} />
          </li>
        ))}
      </ul>
    </div>
  );
};
