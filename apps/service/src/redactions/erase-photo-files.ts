import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { ERASE_PHOTO_FILES } from '../platform/photos/erase-unneeded.js';
import { fileNeeds } from '../platform/photos/file-needs.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { PrintCopies } from '../platform/photos/print-copies.js';
import { Jobs } from '../platform/recompute/jobs.js';

/** Erases the files of a photo that no photo needs any more, with what was made of them to be printed. */
@Injectable()
export class ErasePhotoFiles {
  constructor(
    private readonly db: DataSource,
    private readonly store: PhotoStore,
    private readonly copies: PrintCopies,
    jobs: Jobs,
  ) {
    jobs.of(ERASE_PHOTO_FILES, ({ photo }) => this.run(String(photo)));
  }

  async run(photo: string): Promise<void> {
    for (const { name, needed } of await fileNeeds(this.db.manager, photo)) {
      if (needed) continue;
      await this.store.erase(name);
      await this.copies.forget(name);
    }
  }
}
