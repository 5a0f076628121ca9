import { desorptionRate, desorptionTime } from '../../physics/desorption.ts';
import { driedConductivity, shelfTransfer } from '../../physics/heat-transfer.ts';
import { chamberLoad } from '../../plant/chamber-load.ts';
import { dryingInstant, dryingRate } from '../../plant/drying-rate.ts';
import type { LoadLaw } from '../../plant/load-law.ts';
import { trapLaw } from '../../plant/trap-law.ts';
import type { ChamberSpec, ProductSpec } from '../../plant/types.ts';

/** Parts into which the drying front's way is cut. */
const PARTS = 32;

/** What rounding, the steps of the simulation and the slight rise of the sublimation heat with temperature may cost [–]. */
const ALLOWANCE = 0.98;

/** So well does ice on the perfect trap conduct [W/(m·K)] that it never gets warmer for it. */
const ENDLESS = 1e12;

/** The chamber with the best heat transfer it can have while it dries, and a trap that no ice insulates. */
function perfectChamber(chamber: ChamberSpec): ChamberSpec {
  const contact = shelfTransfer(chamber.heat, chamber.pressureCeiling);
  return {
    ...chamber,
    heat: { contact, pressureSlope: 0, pressureDamping: 0, radiation: 0 },
    trap: { ...chamber.trap, iceConductivity: ENDLESS },
  };
}

/** The product with the best conductivity its dried layer can have while it dries in a chamber. */
function perfectProduct(product: ProductSpec, { pressureCeiling }: ChamberSpec): ProductSpec {
  const best = driedConductivity(product.driedConductivity, product.driedConductivitySlope, pressureCeiling);
  return { ...product, driedConductivity: best, driedConductivitySlope: 0 };
}

/** Time until the ice is gone [s]: ∫ ice/flow over the dried fraction, each part at the faster of its ends. */
function primaryTime(chamber: ChamberSpec, load: LoadLaw): number {
  if (load.ice <= 0) return 0;
  const trap = trapLaw(chamber.trap, chamber.gasTemperature);
  const out = dryingInstant();
  const flows = Array.from({ length: PARTS + 1 }, (_, k) => {
    dryingRate(chamber, trap, load, k / PARTS, 0, 0, out);
    return out.flow;
  });
  return flows.slice(1).reduce((sum, flow, k) => sum + load.ice / PARTS / Math.max(flow, flows[k] ?? 0), 0);
}

/** Time for the bound water [s], the load as warm all the while as it can get. */
function secondaryTime(load: LoadLaw): number {
  const { desorption, loadingTemperature, frozenLimit } = load.product;
  const start = load.ice > 0 ? frozenLimit : loadingTemperature;
  const rate = desorptionRate(desorption.rate, desorption.activationEnergy, Math.max(start, load.shelfSecondary));
  return desorptionTime(load.boundMoisture, desorption.target, desorption.equilibrium, rate);
}

/**
 * Less time than any load of a product can take to dry in a chamber [s], whatever its pump, hose and neighbours do: no gas but that
 * which helps the heat across, taken at the pressure ceiling where it helps most, no ice on the trap, secondary drying at the
 * warmest from its first second. Every limit of the drying rate is looser than in any week that is run, so the rate is higher.
 * Infinite where even so nothing dries.
 */
export function quickestDrying(product: ProductSpec, chamber: ChamberSpec): number {
  const perfect = perfectChamber(chamber);
  const load = chamberLoad(perfectProduct(product, chamber), perfect);
  return ALLOWANCE * (primaryTime(perfect, load) + secondaryTime(load));
}
