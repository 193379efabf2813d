import type { Locator } from 'playwright-core';

/** A hand that does a task on a page, and counts what it asks of a person: taps, and fields that are filled in. */
export class Hand {
  taps = 0;
  fields = 0;

  async tap(what: Locator): Promise<void> {
    await what.click();
    this.taps += 1;
  }

  async type(field: Locator, words: string): Promise<void> {
    await field.fill(words);
    this.fields += 1;
  }

  async choose(field: Locator, value: string): Promise<void> {
    await field.selectOption(value);
    this.fields += 1;
  }

  async attach(field: Locator, file: Buffer, name = 'certificate.png'): Promise<void> {
    await field.setInputFiles({ name, mimeType: 'image/png', buffer: file });
    this.fields += 1;
  }
}
