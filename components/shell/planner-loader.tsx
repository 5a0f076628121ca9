'use client';

import dynamic from 'next/dynamic';

/** The planner runs in the browser only: it needs its storage and its workers. */
export const PlannerLoader = dynamic(() => import('./planner-page.tsx'), {
  ssr: false,
  loading: () => <p className="notice">Rimeplan is opening …</p>,
});
