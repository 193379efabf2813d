import { useQuery } from '@tanstack/react-query';
import { useRef } from 'react';
import { sessionQuery } from '../api/queries.js';
import { plantInstant } from './plant-instant.js';

/** What every record carries beside what it is about. */
export interface EnvelopeSent {
  readonly id: string;
  readonly enteredBy: string;
  readonly device: string;
  readonly happenedAt: string;
}

interface Envelopes {
  /** The envelope for what was typed: the same again for a retry of the same, and the same id until it is recorded. */
  readonly of: (typed: string, when: string) => EnvelopeSent;
  /** It was recorded: what comes next is another fact. */
  readonly spend: () => void;
}

/** Makes the envelopes of one form. The service records one id once, however often it is sent. */
export const useEnvelope = (): Envelopes => {
  const { data } = useQuery(sessionQuery);
  const kept = useRef<{ typed: string; envelope: EnvelopeSent } | null>(null);
  return {
    of: (typed, when) => {
      if (kept.current?.typed === typed) return kept.current.envelope;
      const envelope = {
        id: kept.current?.envelope.id ?? crypto.randomUUID(),
        enteredBy: data?.person?.badge ?? '',
        device: data?.device ?? '',
        happenedAt: when === '' ? new Date().toISOString() : plantInstant(when, data?.plant.timeZone ?? 'UTC'),
      };
      kept.current = { typed, envelope };
      return envelope;
    },
    spend: () => {
      kept.current = null;
    },
  };
};
