package whatif

import (
	"fmt"
	"testing"
)

// Of too many values those nearest to the present stay, beside one another, and the present among them.
func TestNearest(t *testing.T) {
	kind := func(n, now int) Kind {
		k := Kind{Now: now}
		for v := range n {
			k.Values = append(k.Values, Value{Key: fmt.Sprint(v)})
		}
		return k
	}
	for _, c := range []struct {
		in   []Kind
		most int
		want string
	}{
		{[]Kind{kind(3, 1), kind(2, 0)}, 5, "0-2 at 1, 0-1 at 0, "},
		{[]Kind{kind(9, 4), kind(2, 0)}, 7, "2-6 at 4, 0-1 at 0, "},
		{[]Kind{kind(9, 8), kind(9, 0)}, 6, "6-8 at 8, 0-2 at 0, "},
		{[]Kind{kind(9, -1), kind(5, 2)}, 9, "0-3 at -1, 0-4 at 2, "}, // none is present: the first are nearest
	} {
		got, total := "", 0
		for _, k := range nearest(c.in, c.most) {
			now := "-1"
			if k.Now >= 0 {
				now = k.Values[k.Now].Key
			}
			got += fmt.Sprintf("%s-%s at %s, ", k.Values[0].Key, k.Values[len(k.Values)-1].Key, now)
			total += len(k.Values)
		}
		if got != c.want || total > c.most {
			t.Errorf("%s, %d in all; want %s", got, total, c.want)
		}
	}
}
