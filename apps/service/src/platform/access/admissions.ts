import { Injectable } from '@nestjs/common';
import { newSecret } from '../ids.js';
import type { SendingDevice } from './call.js';

/** Header with the ticket of a kept entry that is sent again. */
export const ADMISSION = 'x-hull-record-admission';

/** Tickets under which this process sends itself a kept entry that quality admits, each good for one request. */
@Injectable()
export class Admissions {
  private readonly tickets = new Map<string, SendingDevice>();

  issue(device: SendingDevice): string {
    const ticket = newSecret();
    this.tickets.set(ticket, device);
    return ticket;
  }

  /** The device of a ticket, which is void then. */
  redeem(ticket: unknown): SendingDevice | null {
    if (typeof ticket !== 'string') return null;
    const device = this.tickets.get(ticket) ?? null;
    this.tickets.delete(ticket);
    return device;
  }
}
