import { getRouteApi, Link, useNavigate } from '@tanstack/react-router';
import { useState, useSyncExternalStore } from 'react';
import type { Day, NowLayer, NowPart, NowRecord } from '../day/now.js';
import { useDay } from '../day/use-day.js';
import { spotsOf } from '../day/work-of.js';
import { network } from '../device/network.js';
import { mark, stamp } from '../marks/mark.js';
import { queueEntry } from '../outbox/queue-entry.js';
import { Acts, StationPage } from '../station-frame/station-page.js';
import { useHolder } from '../station-frame/use-holder.js';
import { useKeep } from '../station-frame/use-keep.js';
import { Button } from '../ui/button.js';
import { Moment } from '../words/moments.js';
import { Said, Term, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { DayState } from './day-state.js';
import { LayerBands } from './layer-bands.js';
import { SignHere } from './sign-here.js';
import { WorkList } from './work-list.js';

const route = getRouteApi('/station/sign');

/** Where the hold point of a layer is signed, by somebody who did not make it. */
export const SignPage = () => {
  const { t } = useWords();
  const day = useDay();
  const { part: number, layer: code } = route.useSearch();
  return (
    <DayState of={day}>
      {(now) => {
        const part = now.parts.find((each) => each.number === number);
        const layer = part?.layers.find(({ scheduled }) => scheduled.code === code);
        if (part && layer?.record)
          return <Signing day={now} part={part} layer={layer} record={layer.record} key={`${number} ${code}`} />;
        return (
          <StationPage title={t('sign.title')} name={t('sign.title')}>
            <WorkList day={now} only={['sign']} empty={t('sign.nothing')} />
          </StationPage>
        );
      }}
    </DayState>
  );
};

interface SigningProps {
  readonly day: Day;
  readonly part: NowPart;
  readonly layer: NowLayer;
  readonly record: NowRecord;
}

const Signing = ({ day, part, layer, record }: SigningProps) => {
  const { t } = useWords();
  const { scheduled } = layer;
  return (
    <StationPage
      title={t('sign.title')}
      over={t('sign.title')}
      name={part.hull ?? part.number}
      isCode
      side={
        <p>
          <b className="n">{scheduled.code}</b> <Said text={scheduled.name} />
        </p>
      }
    >
      <p className="st-call">
        <Said text={scheduled.holdPoint ?? ''} />
      </p>
      <p>
        <Text of="sign.madeBy" with={{ by: record.doneBy.join(', '), at: <Moment at={record.endedAt} /> }} />
      </p>
      <ul className="plain st-say">
        {scheduled.readings.map(({ what, spots }) => (
          <li key={what}>
            <ReadSoFar record={record} what={what} asked={spots} />
          </li>
        ))}
      </ul>
      <Stamp part={part} layer={layer} record={record} />
      <LayerBands part={part} current={scheduled.code} materials={day.materials} />
    </StationPage>
  );
};

const ReadSoFar = ({ record, what, asked }: { record: NowRecord; what: string; asked: number }) => {
  const taken = spotsOf(record, what);
  const outside = taken.filter(({ verdict }) => verdict === 'outside').length;
  const shape = outside > 0 ? 'outside' : taken.length < asked ? 'near' : 'inside';
  return mark(
    shape,
    <Text of="sign.read" with={{ what: <Term word={what} />, taken: taken.length, asked, outside }} />,
  );
};

/** The signature, or the way to it: whoever made the layer hands the tablet over. */
const Stamp = ({ part, layer: { scheduled }, record }: Omit<SigningProps, 'day'>) => {
  const { t } = useWords();
  const holder = useHolder();
  const navigate = useNavigate();
  const { reached } = useSyncExternalStore(network.subscribe, network.get);
  const { keep, busy, note } = useKeep();
  const [signed, setSigned] = useState(false);
  const [signedHere, setSignedHere] = useState(false);
  if (record.signature !== null && !signed)
    return (
      <p>
        {stamp(`${scheduled.holdPoint ?? ''} · ${record.signature.by}`)}{' '}
        {record.signature.identity === 'provisional' ? t('sign.provisional') : null}
        {record.signature.identity === 'waits' ? t('sign.waits') : null}
      </p>
    );
  // Of who took over off line the roles may not be known.
  const maySign = !holder?.roles.length || holder.roles.some((role) => ['inspector', 'quality'].includes(role));
  const isMaker = holder !== null && record.doneBy.includes(holder.badge);
  const sign = async (): Promise<void> => {
    const about = `${part.number}, ${scheduled.code}`;
    const options = { lanes: [part.number], about, detail: scheduled.holdPoint ?? '' };
    if (await keep(() => queueEntry('/api/layers/:layer/signatures', { layer: record.id }, {}, options)))
      setSigned(true);
  };
  const signHere = (): Promise<void> => {
    setSignedHere(true);
    return sign();
  };
  if (signed)
    return (
      <>
        {note}
        {signedHere ? <p className="caution">{t('sign.nowTheirs', { badge: holder?.badge ?? '' })}</p> : null}
        <Acts>
          {signedHere ? (
            <Link to="/station/take-over" className="btn do">
              {t('sign.takeBack')}
            </Link>
          ) : null}
          <Button className={signedHere ? 'btn' : 'btn do'} onPress={() => void navigate({ to: '/station' })}>
            {t('station.start')}
          </Button>
        </Acts>
      </>
    );
  return (
    <>
      {maySign || isMaker ? null : <p className="wrong">{t('sign.notYours')}</p>}
      {isMaker ? <p className="wrong">{t('sign.youMadeIt')}</p> : null}
      {holder !== null && !holder.proved ? <p className="caution">{t('sign.willBeProvisional')}</p> : null}
      {note}
      {reached && (holder === null || isMaker || !maySign) ? (
        <SignHere makers={record.doneBy} onProved={signHere} />
      ) : null}
      <Acts>
        {holder === null || isMaker || !maySign ? null : (
          <Button className="btn do" busy={busy} onPress={() => void sign()}>
            {t('sign.do', { badge: holder.badge })}
          </Button>
        )}
        <Link
          to="/station/take-over"
          search={{ layer: scheduled.code, part: part.number }}
          className={!reached && (isMaker || !maySign || holder === null) ? 'btn do' : 'btn'}
        >
          {t('sign.handOver')}
        </Link>
      </Acts>
    </>
  );
};
