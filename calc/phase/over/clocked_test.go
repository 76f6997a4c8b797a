package over_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// One branch of seven 22 AWG, 3.27 mm bare (1.09 · 3), between two ends that are clocked.
//
// 30 times the diameter over the sheath for a quarter turn, a third of that for each hour:
// the boots of shell 8 take 39 mm (straight) and less off the run. Two clocks are seen from
// opposite sides, so that 3 and 9 face the same way and 3 and 3 do not.
func TestClockedApart(t *testing.T) {
	type end struct {
		boot        string
		key, points int
	}
	build := func(length unit.Millimetre, a, z end) *sheet.Sheet {
		s := calctest.Ringed(t, 1.09, 0, float64(length), []int{1, 6}, "", "")
		h := *s.H
		h.Terminations = append([]model.Termination{}, h.Terminations...)
		for k, e := range map[int]end{0: a, 1: z} {
			term := &h.Terminations[k]
			if e.boot != "" {
				term.Boot = model.Some(e.boot)
			}
			if e.key > 0 {
				term.Clock = model.Some(e.key)
			}
			if e.points > 0 {
				term.BootClock = model.Some(e.points)
			}
		}
		return calc.Complete(&h, s.Base, nil)
	}
	over := build(400, end{}, end{}).Branches[0].Sheath.Verdict.OverMM
	if over < 4.2 || over > 5.2 {
		t.Fatalf("over the sheath %v", over)
	}
	quarter := 30 * over
	boots := 2 * func() unit.Millimetre { b, _ := calctest.Catalogue(t).Boot("boot-90-8"); return b.LengthMM }()
	for _, c := range []struct {
		name   string
		length unit.Millimetre
		a, z   end
		turn   int // 0: nothing is said
	}{
		{"keys a quarter apart, just too short", quarter - 1, end{"", 12, 0}, end{"", 3, 0}, 90},
		{"keys a quarter apart, just long enough", quarter + 1, end{"", 12, 0}, end{"", 3, 0}, 0},
		{"keys an hour apart need a third", quarter/3 - 1, end{"", 12, 0}, end{"", 1, 0}, 30},
		{"and have it", quarter/3 + 1, end{"", 12, 0}, end{"", 1, 0}, 0},
		{"keys opposite need twice as much", 2*quarter - 1, end{"", 12, 0}, end{"", 6, 0}, 180},
		{"keys that face the same way on a straight run", 60, end{"", 3, 0}, end{"", 9, 0}, 0},
		{"keys at 3 from both sides are opposite", 60, end{"", 3, 0}, end{"", 3, 0}, 180},
		{"two boots of 90 degrees a quarter apart", quarter + boots - 1, end{"boot-90-8", 0, 12}, end{"boot-90-8", 0, 3}, 90},
		{"and long enough", quarter + boots + 1, end{"boot-90-8", 0, 12}, end{"boot-90-8", 0, 3}, 0},
		{"boots alike, keys apart", quarter + boots - 1, end{"boot-90-8", 12, 12}, end{"boot-90-8", 3, 12}, 90},
		{"keys alike, boots apart by more", quarter, end{"boot-90-8", 12, 12}, end{"boot-90-8", 12, 6}, 180},
		{"45 against 90", 100, end{"boot-45-8", 0, 12}, end{"boot-90-8", 0, 4}, 120},
		{"a straight boot points nowhere", 100, end{"boot-straight-8", 0, 12}, end{"boot-90-8", 0, 3}, 0},
		{"one boot without a clock", 100, end{"boot-90-8", 0, 12}, end{"boot-90-8", 0, 0}, 0},
		{"boots alike", 100, end{"boot-90-8", 0, 4}, end{"boot-90-8", 0, 8}, 0},
	} {
		g, ok := calctest.Snag(build(c.length, c.a, c.z), "clock", "")
		if ok != (c.turn > 0) {
			t.Errorf("%s: %v %s", c.name, ok, g.Says)
			continue
		}
		if ok && (g.Level != sheet.Warn || !strings.Contains(g.Says, fmt.Sprintf("turn by %d degrees", c.turn)) ||
			!strings.Contains(g.Says, fmt.Sprintf("it is %s mm long", unit.Fixed(c.length, 0)))) {
			t.Errorf("%s: %s", c.name, g.Says)
		}
	}
}
