/** A lot would be made, directly or through others, of itself; `path` runs from the lot to itself, each made of the next. */
export class LotCycle extends Error {
  override readonly name = 'LotCycle';
  readonly code = 'lot-cycle';

  constructor(readonly path: readonly string[]) {
    super(`A lot cannot be made of itself: ${path.join(' is made of ')}.`);
  }
}

/** A lot was named that the genealogy given does not hold. */
export class LotUnknown extends Error {
  override readonly name = 'LotUnknown';
  readonly code = 'lot-unknown';

  constructor(readonly lot: string) {
    super(`Lot ${lot} is not in the genealogy given.`);
  }
}

/** A mass that must be a number of at least 0 kg is not. */
export class MassInvalid extends Error {
  override readonly name = 'MassInvalid';
  readonly code = 'mass-invalid';

  constructor(readonly kg: number) {
    super(`A mass of ${kg} kg cannot be mixed: it must be a finite number of at least 0 kg.`);
  }
}

/** The masses a fraction or a share would be taken of do not add up to more than 0 kg. */
export class MassMissing extends Error {
  override readonly name = 'MassMissing';
  readonly code = 'mass-missing';

  constructor(readonly kg: number) {
    super(`Nothing can be a fraction of ${kg} kg: the total must be a finite number above 0 kg.`);
  }
}
