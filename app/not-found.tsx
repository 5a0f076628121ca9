/** Shown for an address that leads nowhere. */
export default function NotFound() {
  return (
    <main className="notice">
      <h1>There is no page here</h1>
      <p>The address may be mistyped. Your plan is untouched.</p>
      <p>
        {/* A plain link: it works from any depth of a file server, before any script has loaded. */}
        <a href="/">Back to the plan</a>
      </p>
    </main>
  );
}
