/** A caution that stands on the page whatever the plan says. */
export interface Caution {
  readonly about: string;
  readonly words: string;
}

/** What a planner cannot know and must not be trusted with. */
export const CAUTIONS: readonly Caution[] = [
  {
    about: 'Power',
    words:
      'The electric figures are estimates. Whether a supply, a circuit or a breaker can carry them is for a licensed electrician, under the code that holds where you are.',
  },
  {
    about: 'Vacuum and oil',
    words:
      'Pumps give off heat and oil mist: lead the exhaust outdoors or through a mist filter, air the room, and follow the makers’ instructions. More chambers on one pump mean that one failure stops them all.',
  },
  {
    about: 'Food',
    words:
      'Dry is not the same as safe. Water activity, heat treatment, allergens, labels and licences are for your food authority and a qualified food scientist; freezing and drying do not kill germs.',
  },
  {
    about: 'Money and tax',
    words:
      'A projection is no promise. Talk debt over with your lender and taxes with a licensed accountant before you sign anything.',
  },
];
