# Columns of readings with one slip each, from a simulator that shares no code with the engine: jars that cool by free
# convection and conduction in air that drifts, stepped in time, read with noise and rounded to a mark.
#
#   python3 engine/src/test/scipy/slip_columns.py > /tmp/columns.csv
#
# then in engine/: mvn -q test-compile exec:java -Dexec.classpathScope=test \
#   -Dexec.mainClass=org.snugsheet.engine.slips.ColumnsReport -Dcolumns=/tmp/columns.csv
#
# A line: kind; row of the slip; mark; surroundings; number meant; times; readings.
import random

random.seed(7)
EACH = 300
CLEAN = 1500


def jar():
    n, step = random.randint(7, 14), random.choice([2, 3, 4, 5])
    room, temperature = random.uniform(0, 20), random.uniform(36, 44)
    loss, drift, seen, t, dt = random.uniform(0.015, 0.07), random.uniform(0, 0.02), [], 0.0, 0.05
    for _ in range(n):
        seen.append(temperature)
        for _ in range(int(step / dt)):
            above = temperature - (room + drift * t)
            temperature -= dt * loss * above * (0.75 + 0.25 * (abs(above) / 25) ** 0.25)
            t += dt
    mark, noise = random.choice([0.5, 1.0]), random.uniform(0.05, 0.3)
    read = [round((x + random.gauss(0, noise)) / mark) * mark for x in seen]
    return [i * step for i in range(n)], read, round(room), mark


def line(kind, row, times, readings, room, mark, meant):
    print(kind, row, mark, room, meant, ",".join(map(repr, times)), ",".join(map(repr, readings)), sep=";")


for _ in range(CLEAN):
    times, readings, room, mark = jar()
    line("clean", 0, times, readings, room, mark, "")
for kind in ["comma in the first row", "comma", "sign", "ten degrees", "rows exchanged", "digits", "last hour"]:
    made = 0
    while made < EACH:
        times, readings, room, mark = jar()
        i, typed, clock = random.randrange(len(readings)), list(readings), list(times)
        meant = readings[i]
        if kind == "comma in the first row":
            i, meant = 0, readings[0]
            typed[0] = round(readings[0] / 10, 3)
        elif kind == "comma":
            typed[i] = round(readings[i] / 10, 3)
        elif kind == "sign":
            typed[i] = -readings[i]
        elif kind == "ten degrees":
            typed[i] = readings[i] + random.choice([-10, 10])
        elif kind == "digits":
            typed[i] = float(("%02d" % int(readings[i]))[::-1])
            if abs(typed[i] - readings[i]) < 5:
                continue
        elif kind == "last hour":
            i = len(readings) - 1
            meant, clock[i] = times[i], times[i] + 60
        else:
            j = i + random.randint(2, 4)
            if j >= len(readings) or abs(readings[i] - readings[j]) < 3:
                continue
            typed[i], typed[j] = typed[j], typed[i]
        line(kind, i + 1, clock, typed, room, mark, meant)
        made += 1
