const PATHS = {
  undo: 'M4 9h9a4.500 4.500 0 0 1 0 9H8M4 9l4-4M4 9l4 4',
  redo: 'M20 9h-9a4.500 4.500 0 0 0 0 9h5M20 9l-4-4M20 9l-4 4',
  open: 'M3 18V6h6l2 2.500h10V18zM3 11h18',
  save: 'M12 4v11M7.500 11l4.500 4.500 4.500-4.500M4 20h16',
  plus: 'M12 5v14M5 12h14',
  copy: 'M9 9h11v11H9zM5 15H4V4h11v1',
  remove: 'M5 12h14',
  up: 'M12 19V6M6 11l6-6 6 6',
  down: 'M12 5v13M6 13l6 6 6-6',
  day: 'M12 8a4 4 0 1 0 0 8 4 4 0 0 0 0-8M12 2v2M12 20v2M2 12h2M20 12h2M5 5l1.500 1.500M17.500 17.500 19 19M19 5l-1.500 1.500M6.500 17.500 5 19',
  night: 'M19 14.500A8 8 0 0 1 9.500 5a8 8 0 1 0 9.500 9.500z',
  columns: 'M4 5h16v14H4zM10 5v14M15 5v14',
  plans: 'M8 4h11v13M5 7h11v13H5zM8 11h5M8 15h5',
  link: 'M10 14a4 4 0 0 0 5.700 0l3-3a4 4 0 0 0-5.700-5.700l-1 1M14 10a4 4 0 0 0-5.700 0l-3 3a4 4 0 0 0 5.700 5.700l1-1',
  close: 'M6 6l12 12M18 6 6 18',
} as const;

export type SignName = keyof typeof PATHS;

/** A small drawn sign; the words beside it or its button's label say what it means. */
export function Sign({ name }: { readonly name: SignName }) {
  return (
    <svg width={18} height={18} viewBox="0 0 24 24" aria-hidden="true">
      <path
        d={PATHS[name]}
        fill="none"
        stroke="currentColor"
        strokeWidth={1.8}
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
