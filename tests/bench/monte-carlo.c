/* The run of tests/bench/monte-carlo.ts in C, part for part: even draws, shapes, factors, structures, lives, ratio, quantiles. */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static uint32_t s[4];
static uint32_t rotate(uint32_t w, int by) { return (w << by) | (w >> (32 - by)); }
static uint32_t next(void) {
  uint32_t result = rotate(s[1] * 5, 7) * 9, shifted = s[1] << 9;
  s[2] ^= s[0]; s[3] ^= s[1]; s[1] ^= s[2]; s[0] ^= s[3]; s[2] ^= shifted; s[3] = rotate(s[3], 11);
  return result;
}
static void fresh(uint32_t seed) { for (int i = 0; i < 4; i++) s[i] = (seed + i + 1) * 0x9e3779b9u ^ 0x85ebca6bu * (i + 1); }

static int n;
static double *room(void) { return malloc(sizeof(double) * n); }
static double *even(uint32_t name) {
  double *u = room();
  fresh(name);
  for (int i = 0; i < n; i++) u[i] = (next() + 0.5) / 4294967296.0;
  return u;
}
static double *uniform(uint32_t name, double value, double h) {
  double *u = even(name), *v = room();
  for (int i = 0; i < n; i++) v[i] = value - h + 2 * h * u[i];
  free(u);
  return v;
}
static double *triangular(uint32_t name, double low, double mode, double high) {
  double *u = even(name), *v = room(), rising = (mode - low) / (high - low);
  for (int i = 0; i < n; i++)
    v[i] = u[i] < rising ? low + sqrt(u[i] * (high - low) * (mode - low))
                         : high - sqrt((1 - u[i]) * (high - low) * (high - mode));
  free(u);
  return v;
}
/* Wichura's AS 241, as in src/model/normal-score.ts; the coefficients are handed over by the script. */
static const double MIDDLE_A[8] = MIDDLE_ABOVE, MIDDLE_B[8] = MIDDLE_BELOW, NEAR_A[8] = NEAR_ABOVE,
                    NEAR_B[8] = NEAR_BELOW, FAR_A[8] = FAR_ABOVE, FAR_B[8] = FAR_BELOW;
static double ratio(const double *a, const double *b, double x) {
  double above = 0, below = 0;
  for (int i = 0; i < 8; i++) above = above * x + a[i];
  for (int i = 0; i < 8; i++) below = below * x + b[i];
  return above / below;
}
static double score(double p) {
  double q = p - 0.5;
  if (fabs(q) <= 0.425) return q * ratio(MIDDLE_A, MIDDLE_B, 0.180625 - q * q);
  double r = sqrt(-log(q < 0 ? p : 1 - p));
  double tail = r <= 5 ? ratio(NEAR_A, NEAR_B, r - 1.6) : ratio(FAR_A, FAR_B, r - 5);
  return q < 0 ? -tail : tail;
}
static double *normal(uint32_t name) {
  double *u = even(name);
  for (int i = 0; i < n; i++) u[i] = score(u[i]);
  return u;
}

static double radians(double deg) { return deg * M_PI / 180; }
static double force(double tangent, double mu) { return log((tangent + mu) / (1 - mu * tangent)); }
static double *friction, *thicknessExponent, *finishExponent, *apexExponent, *life, *share, *power, *structure;
/* The ordinary blade: 20°, 0.4 mm, flat 3 mm over 14 mm, 8 mm of it in the cut. */
static double *wedge0, *thickness0, *grind0;

static double width(double x) { return log(x <= 0.7 ? 1 - x : 0.09 / (x - 0.4)); }
static double card(double hrc, double carbide) {
  double line = -157 + 15.8 * hrc - 17.8 * 30 + 11.2 * carbide;
  return line < 200 ? log(200) + (line - 200) / 200 : log(line);
}

static double *worth(uint32_t k, double deg, double mm, double um, double hrc, double carbide) {
  double *angle = uniform(k + 1, deg, 1), *edge = uniform(k + 2, mm, 0.03), *grain = uniform(k + 3, um, 2);
  double *hard = uniform(k + 4, hrc, 1), *volume = uniform(k + 5, carbide, 2), *z = normal(k + 6);
  double *sine = room(), *wedge = room(), *apex = room(), *limit = room(), *thickness = room(), *grind = room(),
         *finish = room(), *steel = room(), *residual = room(), *out = room();
  for (int i = 0; i < n; i++) sine[i] = sin(radians(angle[i]));
  for (int i = 0; i < n; i++) wedge[i] = force(sine[i] / sqrt(1 - sine[i] * sine[i]), friction[i]) - wedge0[i];
  for (int i = 0; i < n; i++) apex[i] = log(sine[i]) * apexExponent[i];
  for (int i = 0; i < n; i++) limit[i] = log(sine[i] / sqrt(1 - sine[i] * sine[i]));
  for (int i = 0; i < n; i++) thickness[i] = log(edge[i]) * thicknessExponent[i] - thickness0[i];
  for (int i = 0; i < n; i++) grind[i] = force((3 - edge[i]) * 0.4 / 16, friction[i]) - grind0[i];
  for (int i = 0; i < n; i++) finish[i] = log(grain[i]) * finishExponent[i];
  for (int i = 0; i < n; i++) steel[i] = card(hard[i], volume[i]) * life[i];
  for (int i = 0; i < n; i++) residual[i] = 0.1 * life[i] * z[i];
  for (int i = 0; i < n; i++) {
    double always = finish[i] + steel[i] + residual[i];
    if (structure[i] == 0) out[i] = always - apex[i] - wedge[i] - thickness[i] - grind[i];
    else {
      double r = (exp(wedge[i]) + exp(thickness[i]) + exp(grind[i])) / 3;
      out[i] = structure[i] == 1 ? always - apex[i] - log(r) : always - limit[i] + power[i] * width(share[i] * r);
    }
  }
  double *all[] = {angle, edge, grain, hard, volume, z, sine, wedge, apex, limit, thickness, grind, finish, steel, residual};
  for (int i = 0; i < 15; i++) free(all[i]);
  return out;
}

static double select_(double *w, int low, int high, int k) {
  while (low < high) {
    double a = w[low], b = w[(low + high) / 2], c = w[high];
    double pivot = fmax(fmin(a, b), fmin(fmax(a, b), c));
    int i = low, j = high;
    while (i <= j) {
      while (w[i] < pivot) i++;
      while (w[j] > pivot) j--;
      if (i <= j) { double t = w[i]; w[i++] = w[j]; w[j--] = t; }
    }
    if (k <= j) high = j;
    else if (k >= i) low = i;
    else break;
  }
  return w[k];
}
static void quantiles(const double *results, double *out) {
  double *w = room(), shares[] = {0.05, 0.5, 0.95};
  memcpy(w, results, sizeof(double) * n);
  for (int q = 0, from = 0; q < 3; q++) {
    double place = shares[q] * (n - 1);
    int below = place;
    double low = select_(w, from, n - 1, below), after = INFINITY;
    for (int i = below + 1; i < n; i++) if (w[i] < after) after = w[i];
    out[q] = exp(low + (place - below) * (after - low));
    from = below;
  }
  free(w);
}

static double now(void) { struct timespec t; clock_gettime(CLOCK_MONOTONIC, &t); return t.tv_sec * 1e3 + t.tv_nsec / 1e6; }

int main(int argc, char **argv) {
  n = atoi(argv[1]);
  int times = argc > 2 ? atoi(argv[2]) : 1;
  double best = INFINITY, bestQuantiles = INFINITY, out[3];
  for (int t = 0; t < times; t++) {
    double start = now();
    friction = triangular(1, 0.1, 0.25, 0.4);
    double *angleExponent = triangular(2, 1, 1.3, 2.4);
    thicknessExponent = triangular(3, 0.2, 0.5, 1);
    finishExponent = triangular(4, 0, 0.3, 0.7);
    life = triangular(5, 0.5, 1.5, 2.2);
    share = uniform(6, 0.35, 0.25);
    power = uniform(7, 1.5, 0.5);
    structure = even(8);
    for (int i = 0; i < n; i++) structure[i] = structure[i] < 1.0 / 3 ? 0 : structure[i] < 2.0 / 3 ? 1 : 2;
    apexExponent = room(), wedge0 = room(), thickness0 = room(), grind0 = room();
    double theta = radians(15), phi = atan(0.25 / sqrt(1 + 9 * cos(theta) * cos(theta)));
    for (int i = 0; i < n; i++)
      apexExponent[i] = (angleExponent[i] - 2 * theta / sin(2 * (theta + phi))) / (theta / tan(theta));
    for (int i = 0; i < n; i++) wedge0[i] = force(tan(radians(20)), friction[i]);
    for (int i = 0; i < n; i++) thickness0[i] = log(0.4) * thicknessExponent[i];
    for (int i = 0; i < n; i++) grind0[i] = force(2.6 * (8.0 / 14) / 16, friction[i]);
    double *a = worth(100, 14, 0.4, 15, 61, 8), *b = worth(200, 20, 0.4, 15, 59, 6), *ln = room();
    for (int i = 0; i < n; i++) ln[i] = a[i] - b[i];
    double middle = now();
    quantiles(ln, out);
    double end = now();
    if (end - start < best) best = end - start;
    if (end - middle < bestQuantiles) bestQuantiles = end - middle;
    double *all[] = {friction, angleExponent, thicknessExponent, finishExponent, life, share, power, structure,
                     apexExponent, wedge0, thickness0, grind0, a, b, ln};
    for (int i = 0; i < 15; i++) free(all[i]);
  }
  printf("{\"ms\":%f,\"quantilesMs\":%f,\"band\":[%.6f,%.6f,%.6f]}\n", best, bestQuantiles, out[0], out[1], out[2]);
}
