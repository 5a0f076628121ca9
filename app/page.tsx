import { PlannerLoader } from '../components/shell/planner-loader.tsx';

/** The planner's one page. */
export default function HomePage() {
  return (
    <>
      <noscript>
        <p className="notice">
          Rimeplan works out its figures in your browser, so it needs JavaScript to be switched on.
        </p>
      </noscript>
      <PlannerLoader />
    </>
  );
}
