package run_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	runquery "contralay/calc/query/run"
	"contralay/model"
)

// Every net is rung out once, from its first end to each other: told by joining the ends of wires and
// splices from the file itself.
func TestEachNetOnce(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "feeds", "example") {
		s := calctest.Laid(t, name)
		root := map[string]string{}
		find := func(e string) string {
			for root[e] != "" && root[e] != e {
				e = root[e]
			}
			return e
		}
		join := func(a, b string) {
			if a != "" && b != "" {
				root[find(a)] = find(b)
			}
		}
		ends := map[string]bool{}
		for _, w := range s.H.Wires {
			join(w.From.V, w.To.V)
			for _, e := range []string{w.From.V, w.To.V} {
				if strings.Contains(e, ":") {
					ends[e] = true
				}
			}
		}
		members := map[string]int{}
		for e := range ends {
			members[find(e)]++
		}
		want := 0
		for _, n := range members {
			want += max(n-1, 0)
		}
		tests := runquery.Tests(s, step(t, runquery.Run(s), runquery.HoldBare))
		got := 0
		for _, c := range tests {
			if c.Kind != runquery.Rings || !ends[c.To] {
				continue // a shield, a dead end
			}
			got++
			if find(c.From) != find(c.To) || c.From == c.To {
				t.Errorf("%s: %s does not ring to %s", name, c.From, c.To)
			}
		}
		if got != want || want == 0 {
			t.Errorf("%s: %d pairs rung out, want %d", name, got, want)
		}
		var names []string
		for _, c := range tests {
			names = append(names, c.Name)
		}
		slices.Sort(names)
		if len(slices.Compact(names)) != len(tests) {
			t.Errorf("%s: two tests of one name", name)
		}
	}
}

func step(t *testing.T, all []runquery.RunStep, key string) runquery.RunStep {
	t.Helper()
	k := slices.IndexFunc(all, func(r runquery.RunStep) bool { return r.Key == key })
	if k < 0 {
		t.Fatalf("no step %s", key)
	}
	return all[k]
}

// The last test of a net at a step counts; what is out of its limit, or faulty, is not done until it
// is tested again or somebody with a name keeps it so. Samples count from the last that failed.
func TestWhatATestComesTo(t *testing.T) {
	net := runquery.Check{Kind: runquery.Rings, Name: "P1:A X:1", Limit: 0.3}
	wide, tight := net, net // the limit by an older and by a newer catalogue
	wide.Limit, tight.Limit = 0.5, 0.2
	pull := func(n int) runquery.Check {
		return runquery.Check{Kind: runquery.Pulled, Name: "22 in 20", Limit: 53, Sample: n}
	}
	at := func(step string, c runquery.Check, read ...float64) (out []model.Test) {
		for _, v := range read {
			out = append(out, c.Record(step, model.Some(v), ""))
		}
		return out
	}
	none := model.Opt[float64]{}
	kept := func(step string, by model.Opt[string]) []model.Deviation {
		return []model.Deviation{{At: net.Name, Step: model.Some(step), By: by}}
	}
	insulated := runquery.Check{Kind: runquery.Isolated, Name: "isolation P1", Limit: 100}
	unknown := runquery.Check{Kind: runquery.Pulled, Name: "p", Sample: 1}
	for name, c := range map[string]struct {
		of    runquery.Check
		tests []model.Test
		apart []model.Deviation
		want  runquery.Result
	}{
		"nothing":                {net, nil, nil, runquery.Untested},
		"at the other ring-out":  {net, at("hold pinned", net, 0.1), nil, runquery.Untested},
		"at its limit":           {net, at("hold bare", net, 0.3), nil, runquery.Passed},
		"over it":                {net, at("hold bare", net, 0.301), nil, runquery.Failed},
		"within what was asked":  {net, at("hold bare", wide, 0.4), nil, runquery.Passed},
		"over what was asked":    {net, at("hold bare", tight, 0.25), nil, runquery.Failed},
		"mended":                 {net, at("hold bare", net, 9, 0.2), nil, runquery.Passed},
		"failed later":           {net, at("hold bare", net, 0.2, 9), nil, runquery.Failed},
		"by the beep":            {net, []model.Test{net.Record("hold bare", none, "")}, nil, runquery.Passed},
		"open":                   {net, []model.Test{net.Record("hold bare", none, "does not ring")}, nil, runquery.Failed},
		"kept by nobody":         {net, at("hold bare", net, 9), kept("hold bare", model.Opt[string]{}), runquery.Failed},
		"kept":                   {net, at("hold bare", net, 9), kept("hold bare", model.Some("4")), runquery.Conceded},
		"kept at another":        {net, at("hold bare", net, 9), kept("hold pinned", model.Some("4")), runquery.Failed},
		"isolation too low":      {insulated, at("hold bare", insulated, 99), nil, runquery.Failed},
		"isolation":              {insulated, at("hold bare", insulated, 100), nil, runquery.Passed},
		"second of one sample":   {pull(2), at("hold bare", pull(1), 60), nil, runquery.Untested},
		"second of two":          {pull(2), at("hold bare", pull(1), 60, 61), nil, runquery.Passed},
		"the last came off":      {pull(1), at("hold bare", pull(1), 60, 40), nil, runquery.Failed},
		"first again behind it":  {pull(1), at("hold bare", pull(1), 60, 40, 60), nil, runquery.Passed},
		"second again behind it": {pull(2), at("hold bare", pull(1), 60, 40, 60), nil, runquery.Untested},
		"no limit, any reading":  {unknown, at("hold bare", unknown, 1), nil, runquery.Passed},
	} {
		b := &model.Build{Tests: c.tests, Apart: c.apart}
		if got, _ := c.of.Result(b, "hold bare"); got != c.want {
			t.Errorf("%s: %d, want %d", name, got, c.want)
		}
	}
}

// Lots stand before the first wire off their reel, samples before the first contact and behind the
// ring-out; a record that was begun before is asked for neither.
func TestLotsAndSamplesStandFirst(t *testing.T) {
	for _, name := range []string{"demo", "feeds", "example"} {
		s := calctest.Laid(t, name)
		lots, pinned, pulls := map[string]bool{}, false, 0
		for _, r := range runquery.For(s, &model.Build{EachTest: model.Some(true)}) {
			switch r.Kind {
			case runquery.LotStep:
				lots[r.Of] = true
			case runquery.CutStep:
				if !lots[r.Of] {
					t.Errorf("%s: %s is cut before its lot is written down", name, r.Key)
				}
			case runquery.PullStep:
				if pulls++; pinned || len(runquery.Pieces(s, r)) != 3 {
					t.Errorf("%s: %s, %d samples", name, r.Key, len(runquery.Pieces(s, r)))
				}
			case runquery.PinStep:
				pinned = true
			}
		}
		if len(lots) == 0 || pulls == 0 && name != "feeds" { // which gives no contact sizes
			t.Errorf("%s: %d lots, %d crimps pulled", name, len(lots), pulls)
		}
		for _, r := range runquery.For(s, &model.Build{}) {
			if r.Kind == runquery.LotStep || r.Kind == runquery.PullStep {
				t.Errorf("%s: an older run is asked for %s", name, fmt.Sprint(r.Key))
			}
		}
	}
}
