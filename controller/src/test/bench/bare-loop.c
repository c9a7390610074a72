/* The bare loop that the scan's lateness is held against: absolute deadlines, clock_nanosleep, nothing else.
 * cc -O2 -o bare-loop bare-loop.c && ./bare-loop PERIOD_MS SECONDS */
#define _GNU_SOURCE
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static long long now_ns(void)
{
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return t.tv_sec * 1000000000LL + t.tv_nsec;
}

static int compare(const void *a, const void *b)
{
    const long long x = *(const long long *)a, y = *(const long long *)b;
    return (x > y) - (x < y);
}

int main(int argc, char **argv)
{
    if (argc != 3) {
        fprintf(stderr, "bare-loop PERIOD_MS SECONDS\n");
        return 2;
    }
    const long long period = atoll(argv[1]) * 1000000LL;
    const long long most = atoll(argv[2]) * 1000000000LL / period;
    long long *late = calloc((size_t)most, sizeof *late);
    long long due = now_ns(), missed = 0, count = 0, ran = 0;
    while (late && ran < most) {
        struct timespec t = { due / 1000000000LL, due % 1000000000LL };
        clock_nanosleep(CLOCK_MONOTONIC, TIMER_ABSTIME, &t, NULL);
        late[count++] = now_ns() - due;
        due += period;
        ran++;
        const long long now = now_ns();
        if (now >= due) {
            const long long gone = (now - due) / period + 1;
            missed += gone;
            ran += gone;
            due += gone * period;
        }
    }
    qsort(late, (size_t)count, sizeof *late, compare);
    printf("%lld loops, late by us: p50 %lld, p99 %lld, p99.9 %lld, max %lld; %lld missed\n", count,
           late[count / 2] / 1000, late[count * 99 / 100] / 1000, late[count * 999 / 1000] / 1000,
           late[count - 1] / 1000, missed);
    return 0;
}
