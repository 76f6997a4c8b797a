package laycard_test

import (
	"strings"
	"testing"

	"contralay/model"
	"contralay/ui/paper/laycard"
	"contralay/ui/paper/list"
)

// A clock of a file is seen from the wire side, which looks at the connector; a card looks the other way,
// along the bundle. So a key at 3 stands at 9, and from there 12 is a quarter turn clockwise. By hand.
func TestPositionOneAgainstTheKey(t *testing.T) {
	m := hand(t)
	for _, c := range []struct {
		key, boot int // 0: the file does not say
		says      string
		keyHere   int
	}{
		{12, 0, "in line with its key", 12},
		{3, 0, "a quarter turn clockwise from its key", 9},
		{9, 0, "a quarter turn anticlockwise from its key", 3},
		{6, 0, "opposite its key", 6},
		{1, 0, "1 hour clockwise from its key", 11},
		{10, 0, "2 hours anticlockwise from its key", 2},
		{0, 6, "opposite the way its boot points", 0},
		{0, 0, "does not say where the key of P1 points: position 1 lies on top", 0},
	} {
		h := m.H.EditTermination(0, func(e *model.Termination) {
			e.Clock, e.BootClock = model.Opt[int]{V: c.key, Set: c.key > 0}, model.Opt[int]{V: c.boot, Set: c.boot > 0}
		})
		n := *m.S
		n.H = h
		start := laycard.CardOf(list.MakerOf(&n), 0).Start
		if !strings.Contains(start.Says, c.says) || start.Key.Set != (c.keyHere > 0) || start.Key.V != c.keyHere {
			t.Errorf("key %d, boot %d: %+v", c.key, c.boot, start)
		}
	}
	if says := laycard.CardOf(m, 1).Start.Says; says != "" {
		t.Errorf("a branch from a breakout has no key: %s", says)
	}
}
