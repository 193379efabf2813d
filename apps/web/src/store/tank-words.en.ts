/** Texts of tanks. */
export const tankEn = {
  'store.registerTank': 'Register a tank',
  'store.tankCode': 'Code of the tank',
  'store.capacityKg': 'Capacity, kg',
  'store.tankRegistered': 'Tank {tank} is on record.',
  'store.tankEmpty': 'empty; holds {capacity}',
  'store.tankHolds': '{left} of {capacity}, lot {lot}',
  'store.tankScale': 'All tanks are drawn to one scale: area is kilograms.',
  'store.emptyTankHelp': 'It is empty. A fill begins a new lot, made of what goes in.',
  'store.emptyIt': 'Empty it',
  'store.emptyCaution':
    'Vapors of resin and styrene are harmful and flammable, and a tank is a closed space: ventilate, keep sparks away, and let only who is trained and permitted enter, as local codes ask.',
  'store.cleaned': 'It was cleaned as well',
  'store.recordEmptied': 'Record that it was emptied',
  'store.emptySure':
    'Tank {tank}: what the book still has in it, {book}, counts as lost from then on. A fill after it begins without a heel.',
  'store.emptied': 'Tank {tank} is empty.',
} as const;
