'use client';

interface Props {
  readonly error: Error & { readonly digest?: string };
  readonly reset: () => void;
}

/** The last net: shown when a part of the page has thrown an error nobody expected. */
export default function ErrorScreen({ error, reset }: Props) {
  return (
    <main className="notice" role="alert">
      <h1>Something broke in the page</h1>
      <p>This is a fault in Rimeplan, not in what you entered. Whatever was saved in this browser is untouched.</p>
      <p>
        <code>{error.message}</code>
      </p>
      <button type="button" onClick={reset}>
        Try again
      </button>
    </main>
  );
}
