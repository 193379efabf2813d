import type { HullListItem } from '@hull-record/contracts';
import { useMemo } from 'react';
import { mark } from '../marks/mark.js';
import type { Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { useWords } from '../words/use-words.js';
import { HullLink } from './links.js';
import { Whereabouts } from './whereabouts.js';

/** Hulls as lists show them. */
export const useHullColumns = (): readonly Column<HullListItem>[] => {
  const { t } = useWords();
  return useMemo(
    () => [
      { head: t('record.hull'), cell: ({ number }) => <HullLink to={number} />, names: true, class: 'n' },
      {
        head: t('record.hin'),
        cell: ({ hin }) => (hin === null ? t('record.notYet') : <span className="n">{hin}</span>),
      },
      { head: t('record.model'), cell: ({ modelName }) => modelName },
      { head: t('record.begun'), cell: ({ startedAt }) => <Day at={startedAt} /> },
      {
        head: t('record.layersMade'),
        cell: ({ layersMade: made, layersScheduled: all }) =>
          mark(made >= all ? 'made' : 'to come', t('record.madeOf', { made, all })),
      },
      {
        head: t('record.defects'),
        cell: ({ openDefects: count }) =>
          count === 0 ? t('record.none') : mark('outside', t('record.openDefects', { count })),
      },
      { head: t('record.now'), cell: ({ now }) => <Whereabouts now={now} /> },
    ],
    [t],
  );
};
