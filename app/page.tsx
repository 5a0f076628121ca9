/** The planner's one page. */
export default function HomePage() {
  return (
    <main className="notice">
      <h1>Rimeplan</h1>
      <p>Plan the throughput, running cost and growth of a small freeze-drying shop.</p>
    </main>
  );
}
