import type { PartView } from '@hull-record/contracts';
import { mark, stamp, tape } from '../marks/mark.js';
import { Moment } from '../words/moments.js';
import { useWords } from '../words/use-words.js';
import { NextLayer } from './next-layer.js';

type Layer = PartView['layers'][number];

interface LayerStateProps {
  readonly layer: Layer;
  readonly layers: readonly Layer[];
}

/** How a layer stands: to come, made, signed; and what is left of the time for the next one. */
export const LayerState = ({ layer, layers }: LayerStateProps) => {
  const { t } = useWords();
  const { holdPoint } = layer.scheduled;
  if (layer.record === null)
    return (
      <>
        {mark('to come', t('hulls.toCome'))}
        {holdPoint ? <p className="note soft">{t('hulls.endsIn', { holdPoint })}</p> : null}
      </>
    );
  return (
    <>
      {mark('made', t('hulls.made'))}
      {holdPoint ? <Signature holdPoint={holdPoint} of={layer.record} /> : null}
      <WaitsForNext layer={layer} layers={layers} />
    </>
  );
};

interface SignatureProps {
  readonly holdPoint: string;
  readonly of: NonNullable<Layer['record']>;
}

const Signature = ({ holdPoint, of: { signature } }: SignatureProps) => {
  const { t } = useWords();
  if (signature === null) return <p>{tape(t('hulls.notSigned', { holdPoint }))}</p>;
  return (
    <>
      <p>
        {stamp(
          <>
            {`${holdPoint} · ${signature.by} · `}
            <Moment at={signature.at} />
          </>,
        )}
      </p>
      {signature.identity === 'stated' ? <p className="note soft">{t('hulls.stated')}</p> : null}
    </>
  );
};

/** The time left for the next layer, while none that goes on this one is made. */
const WaitsForNext = ({ layer: { scheduled, record }, layers }: LayerStateProps) => {
  const next = layers.filter((layer) => layer.scheduled.predecessors.includes(scheduled.code));
  const waits = next.length > 0 && next.every((layer) => layer.record === null);
  return waits && record?.nextLayer ? <NextLayer window={record.nextLayer} /> : null;
};
