/**
 * The part of the package odex that the tests use. The package brings its sources instead of types, and
 * those do not hold under our compiler settings; `paths` in the tests' tsconfig points here.
 */

/** Derivatives of all components at `x`. */
export type Derivative = (x: number, y: number[]) => number[];

/** Called after each accepted step; `false` ends the integration. `dense` exists with `denseOutput` only. */
export type OutputFunction = (
  stepNumber: number,
  xBefore: number,
  x: number,
  y: number[],
  dense?: (component: number, x: number) => number,
) => boolean | undefined;

export class Solver {
  constructor(dimension: number);
  absoluteTolerance: number | number[];
  relativeTolerance: number | number[];
  initialStepSize: number;
  maxStepSize: number;
  maxSteps: number;
  denseOutput: boolean;
  /** A callback for `solve` that hands on values every `dx`; wants `denseOutput`. */
  grid(dx: number, out: (x: number, y: number[]) => unknown): OutputFunction;
  /** From `x` to `xEnd`; outcome 0 is success, 1 too many steps, 2 ended by the callback. */
  solve(
    f: Derivative,
    x: number,
    y0: readonly number[],
    xEnd: number,
    output?: OutputFunction,
  ): { readonly y: number[]; readonly outcome: 0 | 1 | 2; readonly nStep: number };
}
