/** What the service itself found, in its own words. */
export interface ServiceStop {
  readonly rule: string;
  readonly detail: string;
  readonly remedy: string;
  /** Who may go on over it, under nonconformance. */
  readonly goesOn: 'shift lead' | 'nobody';
}
