// The rival: reads the bench's numbers, then runs one batch for each line it is given and says how long that took.
//   newton, poses, closed   one batch over all poses: prints nanoseconds and how many were answered
//   dump FILE               what the last batch wrote, as doubles
#include "angles.h"
#include "closed.h"
#include "newton.h"
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static int poses;
static double *travel, *rack, *results;
static double home[3];
static Newton newton;
static Closed closed;
static Angles angles;

static double nanoseconds(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return 1e9 * (double)t.tv_sec + (double)t.tv_nsec;
}

static void take(FILE *file, double *to, size_t count) {
  if (fread(to, sizeof(double), count, file) != count) {
    fprintf(stderr, "The file of numbers ends early.\n");
    exit(2);
  }
}

static int take_int(FILE *file) {
  double x;
  take(file, &x, 1);
  return (int)x;
}

static double *room(size_t count) {
  double *p = malloc(count * sizeof(double));
  if (!p) exit(2);
  return p;
}

static void read_numbers(const char *path) {
  FILE *file = fopen(path, "rb");
  if (!file) {
    fprintf(stderr, "There is no file of numbers at %s.\n", path);
    exit(2);
  }
  poses = take_int(file);
  travel = room((size_t)poses);
  rack = room((size_t)poses);
  results = room((size_t)poses * ANSWER);
  take(file, travel, (size_t)poses);
  take(file, rack, (size_t)poses);
  take(file, home, 3);
  newton.strut = take_int(file);
  newton.first_link = take_int(file);
  newton.rack_at = take_int(file);
  take(file, &newton.size, 1);
  take(file, &newton.sign, 1);
  take(file, newton.packed, PACKED);
  angles.axis = take_int(file);
  take(file, angles.lower, 3);
  take(file, angles.upper, 3);
  take(file, angles.spin, 3);
  take(file, &closed.home, 1);
  take(file, &closed.rate, 1);
  take(file, closed.numbers, CLOSED);
  fclose(file);
}

// Each pose starts from the one before; the first from the design pose.
static int newton_batch(void) {
  double state[STATE] = {home[0], home[1], home[2], 1, 0, 0, 0};
  const double inner = newton.rack_at < 0 ? 0 : newton.packed[newton.rack_at];
  for (int i = 0; i < poses; i++) {
    state[2] = home[2] + travel[i];
    if (!newton_settle(&newton, state, inner + rack[i])) return i;
    double *to = results + ANSWER * i;
    for (int j = 0; j < STATE; j++) to[j] = state[j];
  }
  if (newton.rack_at >= 0) newton.packed[newton.rack_at] = inner;
  return poses;
}

// The same with the angles of every pose, as batch-poses.ts does where there is no closed form.
static int poses_batch(void) {
  double state[STATE] = {home[0], home[1], home[2], 1, 0, 0, 0};
  const double inner = newton.rack_at < 0 ? 0 : newton.packed[newton.rack_at];
  for (int i = 0; i < poses; i++) {
    state[2] = home[2] + travel[i];
    if (!newton_settle(&newton, state, inner + rack[i])) return i;
    write_state(results + ANSWER * i, state, &angles);
  }
  if (newton.rack_at >= 0) newton.packed[newton.rack_at] = inner;
  return poses;
}

static int closed_batch(void) {
  const double *out = closed.out;
  double phi = travel[0] / closed.rate;
  for (int i = 0; i < poses; i++) {
    phi = closed_angle(&closed, travel[i], rack[i], phi);
    if (isnan(phi)) return i;
    double *to = results + ANSWER * i;
    write_angles(to, out[3], out[4], out[5], out[6], out[7], out[8]);
    to[4] = out[0];
    to[5] = out[1];
    to[6] = out[2];
    to[7] = 0;
  }
  return poses;
}

typedef int (*Batch)(void);

static Batch batch_named(const char *name) {
  if (strcmp(name, "newton") == 0) return newton_batch;
  if (strcmp(name, "poses") == 0) return poses_batch;
  if (strcmp(name, "closed") == 0) return closed_batch;
  return NULL;
}

int main(int count, char **words) {
  if (count != 2) {
    fprintf(stderr, "Usage: rival FILE-OF-NUMBERS\n");
    return 2;
  }
  read_numbers(words[1]);
  char line[1024];
  while (fgets(line, sizeof line, stdin)) {
    line[strcspn(line, "\n")] = 0;
    if (strncmp(line, "dump ", 5) == 0) {
      FILE *file = fopen(line + 5, "wb");
      if (!file) return 2;
      fwrite(results, sizeof(double), (size_t)poses * ANSWER, file);
      fclose(file);
      printf("written\n");
    } else {
      const Batch batch = batch_named(line);
      if (!batch) return 2;
      const double before = nanoseconds();
      const int answered = batch();
      printf("%.0f %d\n", nanoseconds() - before, answered);
    }
    fflush(stdout);
  }
  return 0;
}
