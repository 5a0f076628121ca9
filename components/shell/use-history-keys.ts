import { useEffect } from 'react';
import { getPlanner } from '../state/planner.ts';

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.matches('input:not([type=radio]), textarea, select');
}

/** Ctrl+Z and Ctrl+Y anywhere on the page, except where something is being typed. */
export function useHistoryKeys(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const key = event.key.toLowerCase();
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      if (key === 'z' && !event.shiftKey) getPlanner().undo();
      else getPlanner().redo();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}
