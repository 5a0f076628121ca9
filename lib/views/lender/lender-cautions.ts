import type { Caution } from '../cautions.ts';

/** What this document cannot promise, hazard by hazard; each leaves the last word to codes and licensed practice. */
export const LENDER_CAUTIONS: readonly Caution[] = [
  {
    about: 'Power',
    words:
      'Freeze-dryers draw current for hours on end. Loads are added up here and compared with the supply; whether supply, circuits and breakers can carry them is for a licensed electrician under the code that holds where the shop is.',
  },
  {
    about: 'Vacuum vessels',
    words:
      'Chambers are under vacuum for days a week. Doors, windows and relief devices are looked after as the makers say and local rules for pressure and vacuum equipment ask.',
  },
  {
    about: 'Oil mist and exhaust',
    words:
      'Oil-sealed pumps give off oil mist, heat and moist air. Exhaust goes outdoors or through a mist filter, and the room is aired, as makers and local rules on workplace air require; used oil is waste to be handed in.',
  },
  {
    about: 'Hot shelves',
    words: 'Shelves are hot enough to burn. Gloves, guards and training follow local rules for safety at work.',
  },
  {
    about: 'Refrigerant',
    words:
      'Cold traps and freezers hold refrigerant. Only certified hands open them, and refrigerant is handled as the law where the shop is demands.',
  },
  {
    about: 'Food safety and labelling',
    words:
      'Dry is not the same as safe: freezing and drying do not kill germs. Water activity, heat treatment, allergens, labels, shelf life and licences are for the food authority and a qualified food scientist.',
  },
  {
    about: 'Debt and tax',
    words:
      'A projection is no promise and this is no offer. Terms, fees, tax, write-offs and what counts as cover differ by place and lender and change; they are for the lender and a licensed accountant.',
  },
];
