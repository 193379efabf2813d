const zone = document.querySelector<HTMLMetaElement>('meta[name="plant-time-zone"]')?.content ?? 'UTC';
// Canada writes days as ISO 8601 does.
const day = new Intl.DateTimeFormat('en-CA', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' });

/** The calendar day of the plant at an instant (ms since 1970), yyyy-mm-dd. */
export const plantDay = (at: number): string => day.format(new Date(at));
