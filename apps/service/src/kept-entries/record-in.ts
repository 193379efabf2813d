/** The record in what a device sent: the JSON, or the JSON field of a form with a photo; null when it cannot be read. */
export const recordIn = (media: string, body: Buffer): unknown => {
  const text = /^multipart\/form-data\b/i.test(media) ? fieldOf(body) : body.toString('utf8');
  try {
    return text === null ? null : (JSON.parse(text) as unknown);
  } catch {
    return null;
  }
};

/** The field `record` of a form, which comes before its photo. */
const fieldOf = (body: Buffer): string | null =>
  /name="record"[^\r\n]*(?:\r\n[^\r\n]+)*\r\n\r\n([\s\S]*?)\r\n--/.exec(body.toString('utf8'))?.[1] ?? null;
