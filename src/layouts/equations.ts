/** An equation of the method as the core works it out. A test looks each of its figures up in the files it names. */
export interface Equation {
  /** TeX; made into MathML when the site is built. */
  readonly tex: string;
  /** What the signs mean, as far as nothing above it said so. */
  readonly says: string;
  /** Publication, or whose it is. */
  readonly source: string;
  /** Under `src/core`, where it is worked out. */
  readonly files: readonly string[];
}

const SAVITSKY = 'Savitsky 1964';
const OURS = 'derived for this project';

/** By section of the method page. All quantities in SI units, angles of trim and deadrise in degrees. */
export const EQUATIONS: Readonly<
  Record<'hull' | 'drive' | 'store' | 'load' | 'way' | 'answer' | 'fit', readonly Equation[]>
> = {
  hull: [
    {
      tex: 'C_V = \\frac{V}{\\sqrt{g b}}, \\quad F_\\nabla = \\frac{V}{\\sqrt{g \\nabla^{1/3}}}, \\quad F_L = \\frac{V}{\\sqrt{g L}}',
      says: 'V speed through water, b planing beam, ∇ displaced volume, L wetted length at rest, g gravity.',
      source: 'definitions',
      files: ['hull/froude.ts'],
    },
    {
      tex: 'x_G = \\lambda b \\left( 0.75 - \\frac{1}{5.21\\, C_V^2 / \\lambda^2 + 2.39} \\right)',
      says: 'The centre of gravity, x forward of the transom, sets the mean wetted length λb.',
      source: `${SAVITSKY}, centre of pressure`,
      files: ['hull/pressure-centre.ts'],
    },
    {
      tex: 'C_{L0} = \\tau^{1.1} \\left( 0.012\\, \\lambda^{1/2} + 0.0055\\, \\frac{\\lambda^{5/2}}{C_V^2} \\right)',
      says: 'Lift and length set the trim τ.',
      source: `${SAVITSKY}, eq. 15`,
      files: ['hull/planing-lift.ts'],
    },
    {
      tex: 'C_{L\\beta} = C_{L0} - 0.0065\\, \\beta\\, C_{L0}^{0.6} = \\frac{m g}{\\frac{1}{2} \\rho V^2 b^2}',
      says: 'β deadrise, m all-up mass, ρ density of the water.',
      source: `${SAVITSKY}, eq. 16`,
      files: ['hull/planing-lift.ts'],
    },
    {
      tex: 'C_F = \\frac{0.075}{(\\log_{10} \\mathrm{Re} - 2)^2}',
      says: 'Friction line; a roughness is added to it.',
      source: 'ITTC 1957',
      files: ['hull/friction.ts'],
    },
    {
      tex: 's = \\frac{y^3}{1 + y^3}, \\quad y = \\left( \\frac{F_\\nabla}{1.4} \\right)^2',
      says: 'Share gone over to planing.',
      source: OURS,
      files: ['hull/gates.ts'],
    },
    {
      tex: 'w = \\frac{z^5}{1 + z^5}, \\quad z = \\frac{F_L}{0.4}',
      says: 'Share of wave making built up.',
      source: OURS,
      files: ['hull/gates.ts'],
    },
    {
      tex: 'R_0 = \\frac{\\frac{1}{2} \\rho U^2 S (C_F + \\Delta C_F)}{\\cos \\tau} + w\\, m g \\tan \\tau',
      says: 'U speed along the bottom, S wetted surface: at rest and planing, each by its share 1 − s and s. A displacement hull near its hull speed takes the larger of the second term and the series of Delft.',
      source: `${SAVITSKY}, joined for this project`,
      files: ['hull/resistance.ts'],
    },
    {
      tex: 'h = 0.15 \\exp \\left( - \\left( \\frac{\\ln (F_\\nabla / 1.7)}{0.35} \\right)^2 \\right)',
      says: 'What the hump adds.',
      source: 'size after Blount and Fox 1976, from memory',
      files: ['hull/gates.ts'],
    },
    {
      tex: 'R = \\left( k_d (1 - s) + k_p s + k_h h \\right) R_0',
      says: 'Still water. The factors k are 1 until runs of the boat are fitted.',
      source: OURS,
      files: ['hull/resistance.ts'],
    },
    {
      tex: 'R_A = \\frac{1}{2} \\rho_A\\, C_D A\\, (V + W)\\, |V + W|',
      says: 'Air drag; W wind from ahead, A the area it meets.',
      source: 'definition; coefficient common practice',
      files: ['hull/air-drag.ts'],
    },
    {
      tex: 'R_W = 0.3\\, s\\, m g\\, a\\, \\frac{H/b}{1 + 2 H/b}, \\; a = 1.76 - \\frac{\\tau}{6} - 2 \\tan^3 \\beta',
      says: 'Head waves on the plane; H significant height.',
      source: 'Savitsky and Brown 1976, one branch',
      files: ['hull/waves.ts'],
    },
  ],
  drive: [
    {
      tex: 'K_T = \\frac{T}{\\rho n^2 D^4}, \\quad K_Q = \\frac{Q}{\\rho n^2 D^5}, \\quad J = \\frac{V (1 - w_T)}{n D}',
      says: 'T thrust, Q torque, n revs per second, D diameter. K as polynomials in J, pitch, blade area and number of blades. Wake and thrust deduction are 0.02; no wake between two hulls.',
      source: 'Oosterveld and van Oossanen 1975',
      files: ['drive/b-series.ts', 'drive/demand.ts'],
    },
    {
      tex: 'T = \\frac{R}{1 - t}, \\qquad P = 2 \\pi n Q',
      says: 'Thrust that the resistance asks for, solved for revs; P power at the propeller.',
      source: 'definitions',
      files: ['drive/demand.ts', 'drive/propeller.ts'],
    },
    {
      tex: '\\dot m = b P_r\\, \\frac{q + f\\, t(\\nu) + e\\, q^3}{1 + f + e}, \\quad t = \\nu - \\gamma \\nu^3 (1 - \\nu)',
      says: 'Petrol: q share of rated power, ν of rated revs, b consumption at full throttle, f friction, e the rich mixture near full throttle.',
      source: `Willans line, ${OURS}`,
      files: ['drive/petrol.ts'],
    },
    {
      tex: 'P_m(\\nu) = P_r\\, \\nu (1 + \\nu - \\nu^2)',
      says: 'Power there is at full throttle, P at rated revs.',
      source: 'Artamonov’s form, from memory',
      files: ['drive/petrol.ts'],
    },
    {
      tex: 'P_{in} = P + P_r \\left( c_0 + c_1 \\nu + c_2 \\left( \\frac{Q}{Q_r} \\right)^2 \\right)',
      says: 'Electric: standby, iron and copper losses; usual are 0.008, 0.045 and 0.120.',
      source: 'form common practice',
      files: ['drive/electric.ts'],
    },
  ],
  store: [
    {
      tex: 'P_b = P_{in} \\left( 1 + x^8 \\right)^{(k - 1)/8}',
      says: 'What a battery loses for what it gives: x current over the rated one, k Peukert’s exponent.',
      source: 'after Peukert’s law, smooth',
      files: ['drive/battery-rate.ts'],
    },
    {
      tex: 'U = U_n (0.9 + 0.2\\, c), \\quad r = \\frac{0.03\\, U_n}{C} \\, e^{0.015 (25 - \\vartheta)}',
      says: 'Voltage at rest at charge c, inner resistance at ϑ °C for C ampere hours.',
      source: 'common practice, no source',
      files: ['drive/battery-sag.ts'],
    },
    {
      tex: 'I = \\frac{2 P}{U + \\sqrt{U^2 - 4 r P}}, \\qquad U - I r \\geq 0.86\\, U_n',
      says: 'Current for a power, and the voltage at which the battery cuts back.',
      source: 'Ohm’s law; limit common practice',
      files: ['drive/battery-sag.ts', 'drive/battery-power.ts'],
    },
  ],
  load: [
    {
      tex: 'A = \\frac{r^2}{2} (2 \\varphi - \\sin 2 \\varphi), \\qquad \\cos \\varphi = \\frac{r - d}{r}',
      says: 'Section of a tube of radius r that is under water at a draft d.',
      source: 'circular segment',
      files: ['load/tube-segment.ts'],
    },
    {
      tex: '\\rho \\nabla = m, \\qquad \\vec{x}_B - \\vec{x}_G \\parallel \\vec{g}',
      says: 'Level, trim and heel at rest: as much water is displaced as the boat weighs, and its centre lies straight below the boat’s.',
      source: 'Archimedes',
      files: ['load/equilibrium.ts'],
    },
  ],
  way: [
    {
      tex: 'V_G = \\sqrt{V^2 - (c \\sin \\alpha)^2} + c \\cos \\alpha',
      says: 'Speed over ground along the track in a stream c that sets at α to it.',
      source: 'current triangle of chartwork',
      files: ['route/current-triangle.ts'],
    },
    {
      tex: 't = \\frac{d}{V_G}, \\qquad E = t\\, \\dot m(V, m, W, H)',
      says: 'Time and amount of a stretch. All-up mass falls as fuel burns.',
      source: 'definitions',
      files: ['trip/sail.ts'],
    },
    {
      tex: 'H = 0.0413\\, u \\sqrt{F / g}, \\quad u^2 = 0.001 (1.1 + 0.035\\, W_{10})\\, W_{10}^2',
      says: 'Waves of a wind W over a fetch F, cut short where the wind has not blown long enough.',
      source: 'Coastal Engineering Manual, eq. II-2-36',
      files: ['water/growth-laws.ts'],
    },
    {
      tex: 'H = 0.283 \\tanh \\left( 0.0125 \\left( \\frac{g F}{W_{10}^2} \\right)^{0.42} \\right) \\frac{W_{10}^2}{g}',
      says: 'The other law; the higher counts.',
      source: 'Shore Protection Manual, from memory',
      files: ['water/growth-laws.ts'],
    },
    {
      tex: '\\frac{H}{H_0} = \\frac{c_0}{\\sqrt{c_1 (c_1 + 2 u)}}, \\quad c_1 = \\frac{c_0}{2} \\left( 1 + \\sqrt{1 + 4 u / c_0} \\right)',
      says: 'Waves of speed c₀ that run on to a stream u, negative against them.',
      source: 'Longuet-Higgins and Stewart 1961, from memory',
      files: ['water/current-on-waves.ts'],
    },
  ],
  answer: [
    {
      tex: '\\sigma^2 = \\mathbf{g}^{\\mathsf T} \\mathbf{C}\\, \\mathbf{g} + \\sigma_\\mathrm{load}^2 + (0.05\\, s_V)^2 + \\sigma_\\mathrm{leg}^2\\, v',
      says: 'Spread of the need: g how it follows the factors of the boat and C how well these are known; how it follows the speed made; weather of the legs.',
      source: OURS,
      files: ['trip/spread.ts'],
    },
    {
      tex: 'v = \\frac{1}{E^2} \\iint e(x)\\, e(y)\\, e^{-|x - y| / \\ell} \\, dx\\, dy, \\quad \\ell = 5000\\ \\mathrm{m}',
      says: 'Weather stays alike over ℓ, so that a leg cut in two spreads as one; e the amount used per distance.',
      source: OURS,
      files: ['trip/spread.ts'],
    },
    {
      tex: 'P(E \\leq a) = \\sum_{k=1}^{5} \\omega_k\\, \\Phi \\left( \\frac{\\ln (a / E_k)}{\\sigma_k} \\right)',
      says: 'Chance that an amount a suffices: five values of the stream’s error, E what the trip then needs.',
      source: 'Gauss and Hermite; Abramowitz and Stegun 25.4.46, from memory',
      files: ['trip/need.ts'],
    },
    {
      tex: '\\sigma_\\mathrm{gauge} = -\\frac{\\ln (1 - z_g\\, g)}{z_g}, \\quad z_g = \\frac{z\\, g}{\\sqrt{g^2 + \\sigma^2}}',
      says: 'A gauge’s error g, as a share of what can be used, beside the spread σ of the need: what it takes at the point where both together most likely fail; z the normal deviate, 1.645 for the 95th percentile.',
      source: 'first-order reliability, Hasofer and Lind 1974, from memory',
      files: ['trip/spread.ts'],
    },
  ],
  fit: [
    {
      tex: '\\min_{\\mathbf{p}} \\sum_i w_i \\left( \\frac{\\ln M_i(\\mathbf{p}) - \\ln m_i}{\\sigma_i} \\right)^2 + \\sum_j \\left( \\frac{p_j - \\mu_j}{\\sigma_j} \\right)^2',
      says: 'M what the method says of a reading m. Each factor p is held to what is usual; the inverse of the curvature at the minimum is the doubt that remains.',
      source: 'least squares by Levenberg and Marquardt',
      files: ['trials/solve.ts'],
    },
    {
      tex: 's^2 = \\max \\left( 0.1^2, \\frac{4 \\cdot 0.1^2 + \\sum_i (\\ln m_i - \\ln M_i)^2}{4 + n f} \\right)',
      says: 'How little the fitted curve is trusted between its n runs: a usual boat weighs four runs, f is the share of the readings that settled no factor.',
      source: OURS,
      files: ['curve/form-spread.ts', 'trials/fit.ts'],
    },
  ],
};
