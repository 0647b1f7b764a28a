// Numbers of a corner as the bench hands them over: the same doubles that the TypeScript side computes with.
#ifndef NUMBERS_H
#define NUMBERS_H

enum { PACKED = 35, STATE = 7, CLOSED = 48, OUT = 17, ANSWER = 8 };

// Numbers and room of the warm-started Newton, as in src/linkage/newton-kernel.ts.
typedef struct {
  int strut, first_link, rack_at;
  double size, sign;
  double packed[PACKED], rows[30], step[5];
} Newton;

// Numbers and room of the closed form, as in src/linkage/closed-kernel.ts.
typedef struct {
  double home, rate;
  double numbers[CLOSED], out[OUT];
} Closed;

// What batch-row.ts turns a state into angles with; `axis` is false for a five-link, which has no joint axis.
typedef struct {
  int axis;
  double lower[3], upper[3], spin[3];
} Angles;

#endif
