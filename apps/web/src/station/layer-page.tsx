import { getRouteApi, useNavigate } from '@tanstack/react-router';
import { useDay } from '../day/use-day.js';
import { StationPage } from '../station-frame/station-page.js';
import { useWords } from '../words/use-words.js';
import { DayState } from './day-state.js';
import { LayerEntry } from './layer-entry.js';
import { ScanField } from './scan-field.js';
import { WorkList } from './work-list.js';

const route = getRouteApi('/station/layer');

/** Where a layer is entered as scheduled, for one part or several; without one in the address, where it is chosen. */
export const LayerPage = () => {
  const { t } = useWords();
  const day = useDay();
  const navigate = useNavigate();
  const { part: number, layer: code } = route.useSearch();
  return (
    <DayState of={day}>
      {(now) => {
        const part = now.parts.find((each) => each.number === number || each.hull === number);
        const layer =
          part?.layers.find(({ scheduled }) => scheduled.code === code) ??
          part?.layers.find(({ record }) => record === null);
        if (part && layer) return <LayerEntry key={`${part.number} ${code}`} day={now} part={part} layer={layer} />;
        return (
          <StationPage title={t('lay.title')} name={t('lay.title')}>
            {number === undefined || part ? null : <p className="wrong">{t('scan.unknown', { code: number })}</p>}
            <WorkList day={now} only={['make']} empty={t('lay.nothing')} />
            <ScanField
              label={t('scan.part')}
              onCode={(scanned) => void navigate({ to: '/station/layer', search: { part: scanned } })}
            />
          </StationPage>
        );
      }}
    </DayState>
  );
};
