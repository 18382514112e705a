/**
 * What the pages can ask for that is not a change of state: planning, files, keeping. `joinServices.ts` gives the
 * real ones; tests give their own. Nothing here leaves the device unless a person saves a file and carries it, or has
 * agreed to a club's own store on this device.
 */
import type { BenchPageServices } from '../features/bench/services.ts';
import type { BikeServices } from '../features/bike/services.ts';
import type { ClinicServices } from '../features/clinic/services.ts';
import type { GearCheckServices } from '../features/gearcheck/services.ts';
import type { CarryServices } from '../features/handover/services.ts';
import type { RideServices } from '../features/ride/services.ts';
import type { RoadServices } from '../features/road/services.ts';
import type { StartServices } from '../features/start/services.ts';
import type { TeachServices } from '../features/teach/services.ts';
import type { TwoServices } from '../features/two/services.ts';
import type { KeptServices } from '../ui/kept.tsx';

export interface Services
  extends StartServices,
    BikeServices,
    RideServices,
    GearCheckServices,
    TwoServices,
    TeachServices,
    BenchPageServices,
    RoadServices,
    ClinicServices,
    KeptServices {
  /** Plans and rides that are carried between devices. */
  readonly carry: CarryServices;
}
