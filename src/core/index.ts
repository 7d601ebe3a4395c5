export type { Load, FrictionLaw, ContactModel, Hang, Interval } from './types.ts';
export { hangLoad } from './mechanics/hang-load.ts';
export { loadAtNetMass } from './mechanics/load-at-net-mass.ts';
export { counterweightForce } from './mechanics/counterweight-force.ts';
export { frictionRatio } from './friction/friction-ratio.ts';
export { evaluateHang } from './strength/evaluate-hang.ts';
export { loadElasticity } from './strength/load-elasticity.ts';
export { enduranceFraction, enduranceTime } from './strength/endurance.ts';
export { tendonForces } from './strength/tendon-forces.ts';
