/** A caution that stands on the page whatever the plan says. */
export interface Caution {
  readonly about: string;
  readonly words: string;
}

const HAZARDS = {
  power: {
    about: 'Power and circuits',
    words:
      'The electric figures are estimates. Whether a supply, a circuit or a breaker can carry them is for a licensed electrician, under the code that holds where you are.',
  },
  vessels: {
    about: 'Vacuum vessels',
    words:
      'The air presses on a chamber under vacuum with the weight of tonnes. Use no door, window, hose or valve that is cracked or not made for vacuum, and follow the makers and the local rules for such equipment.',
  },
  oilMist: {
    about: 'Oil mist and exhaust',
    words:
      'Pumps give off heat and oil mist: lead the exhaust outdoors or through a mist filter, air the room, hand in used oil, and follow the makers’ instructions and local rules.',
  },
  hotShelves: {
    about: 'Hot shelves',
    words: 'Shelves burn hands. Wear gloves, let them cool before cleaning, and follow local rules for safety at work.',
  },
  refrigerant: {
    about: 'Refrigerant',
    words:
      'Cold traps and freezers hold refrigerant. Only certified hands may open them, as the law where you are asks.',
  },
  food: {
    about: 'Food safety and labelling',
    words:
      'Dry is not the same as safe. Water activity, heat treatment, allergens, labels and licences are for your food authority and a qualified food scientist; freezing and drying do not kill germs.',
  },
  money: {
    about: 'Debt and tax',
    words:
      'A projection is no promise. Talk debt over with your lender and taxes with a licensed accountant before you sign anything.',
  },
} as const satisfies Readonly<Record<string, Caution>>;

/** What a planner cannot know and must not be trusted with. */
export const CAUTIONS: readonly Caution[] = Object.values(HAZARDS);

/** The hazards of each part of the plan, which are told where its values are entered. */
export const PART_CAUTIONS = {
  products: [HAZARDS.food],
  chambers: [HAZARDS.vessels, HAZARDS.hotShelves, HAZARDS.refrigerant],
  pumps: [HAZARDS.oilMist],
  hoses: [HAZARDS.vessels],
  site: [HAZARDS.power, HAZARDS.refrigerant],
  financing: [HAZARDS.money],
} as const satisfies Readonly<Record<string, readonly Caution[]>>;
