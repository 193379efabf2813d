import { Injectable } from '@nestjs/common';

/** Loads the demo plant in the background, through the same use cases as everything else. */
@Injectable()
export class DemoPlant {
  async load(_say: (line: string) => void): Promise<void> {}

  stop(): void {}
}
