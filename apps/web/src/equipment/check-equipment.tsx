import type { UnitCode } from '@hull-record/trade';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { decimal, given, type Said } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { unitSign } from '../words/figures.js';
import { useWords } from '../words/use-words.js';

const SPRAYS = ['timed catch', 'pump ratio', 'gel test', 'cup test', 'inspection'] as const;
const MEASURES = [
  'reference film',
  'reference hardness',
  'reference mass',
  'reference temperature',
  'inspection',
] as const;
const UNITS = ['mil', 'um', 'mm', '%', 'g', 'kg', 'C', 'F', 'min', 's', 'Barcol'] as const;

interface CheckEquipmentProps {
  readonly code: string;
  readonly kind: string;
}

/** Records a check: a figure with its limits, or whether it was found fit. What was read or sprayed since is looked at anew. */
export const CheckEquipment = ({ code, kind }: CheckEquipmentProps) => {
  const { t, term } = useWords();
  const sprays = kind === 'gun' || kind === 'dispenser';
  return (
    <Allowed to="checkEquipment" what={t('equipment.check')}>
      {sprays ? <p className="caution">{t('equipment.catchCaution')}</p> : null}
      <RecordForm
        groups={[
          {
            fields: [
              {
                name: 'what',
                label: t('record.what'),
                kind: 'choice',
                options: (sprays ? SPRAYS : MEASURES).map((what) => [what, term(what)]),
              },
              {
                name: 'good',
                label: t('equipment.found'),
                kind: 'choice',
                options: [
                  ['yes', t('equipment.isFit')],
                  ['no', t('equipment.unfit')],
                ],
                none: t('equipment.byFigure'),
              },
              { name: 'note', label: t('record.note'), kind: 'words' },
            ],
          },
          {
            name: t('equipment.figure'),
            fields: [
              { name: 'value', label: t('equipment.read'), kind: 'decimal' },
              {
                name: 'unit',
                label: t('entry.unit'),
                kind: 'choice',
                options: UNITS.map((unit) => [unit, unitSign(unit)]),
                none: '–',
              },
              { name: 'min', label: t('equipment.least'), kind: 'decimal', pointer: '/limits' },
              { name: 'max', label: t('equipment.most'), kind: 'decimal', pointer: '/limits/max' },
              { name: 'certificate', label: t('equipment.certificate') },
            ],
          },
        ]}
        button={t('equipment.recordCheck')}
        late
        send={(said, envelope) =>
          post(
            '/api/equipment/:code/checks',
            { code },
            {
              ...envelope,
              what: said('what') as (typeof SPRAYS | typeof MEASURES)[number],
              ...figureOf(said),
              ...(said('good') === '' ? {} : { good: said('good') === 'yes' }),
              ...given('certificate', said('certificate')),
              ...given('note', said('note')),
            },
          )
        }
        done={({ result }) => (
          <p>
            {result.good ? mark('inside', t('equipment.checkedFit')) : mark('stopped', t('equipment.checkedUnfit'))}
          </p>
        )}
      />
    </Allowed>
  );
};

/** The figure of a check with its limits, as far as they were typed. */
const figureOf = (said: Said) => {
  const unit = said('unit') as UnitCode;
  const number = (name: 'value' | 'min' | 'max') => (said(name) === '' ? {} : { [name]: Number(decimal(said(name))) });
  const limits = { ...number('min'), ...number('max') };
  return {
    ...(number('value') as { value?: number }),
    ...(said('unit') === '' ? {} : { unit }),
    ...(Object.keys(limits).length === 0 ? {} : { limits: { ...limits, unit } }),
  };
};
