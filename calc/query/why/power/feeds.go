package power

import (
	"fmt"
	"math"
	"slices"

	"contralay/calc/formula/protect"
	"contralay/calc/phase/current"
	"contralay/calc/phase/wires"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How the figures of duty and protection are made.

func wireHeats(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Wire[f.Of]
	if !ok || !wires.Carries(e.Sheet, k) {
		return why.Why{}, false
	}
	mw := &e.H.Wires[k]
	if !mw.Amps.Set {
		w := why.Why{Name: "what comes back through wire " + f.Of, Value: float64(e.Wires[k].Heats), Measure: why.Amperes,
			Says: "no current is entered for it: what the wires carry that name it as their return", Formula: why.Sum}
		for _, i := range wires.Serves(e.Sheet, k) {
			w.In = append(w.In, e.From(e.H.Wires[i].ID, why.Figure{What: "wire.heats", Of: e.H.Wires[i].ID}))
		}
		return w, true
	}
	w := why.Why{Name: "what wire " + f.Of + " carries as heat sees it", Value: float64(e.Wires[k].Heats), Measure: why.Amperes,
		Says: "as it is entered: it counts as always on",
		In:   []why.Input{why.Given("current", float64(mw.Amps.V), why.Amperes)}, Formula: why.First}
	if !wires.DutyOf(mw).Comes() {
		if mw.RestA.V > mw.Amps.V {
			w.In[0] = why.Given("current in between", float64(mw.RestA.V), why.Amperes)
		}
		return w, true
	}
	w.Says = fmt.Sprintf("the root of the mean of its square: on for %s s at most at a time, which is short beside the time a conductor "+
		"takes to warm up", sheet.Plain(float64(protect.AdiabaticFor)))
	w.In = append(w.In, why.Given("on for", float64(mw.OnS.V), why.Seconds), why.Given("in every", float64(mw.PeriodS.V), why.Seconds),
		why.Given("in between", float64(mw.RestA.V), why.Amperes))
	w.Formula = func(in []float64) float64 {
		return math.Sqrt((in[0]*in[0]*in[1] + in[3]*in[3]*(in[2]-in[1])) / in[2])
	}
	return w, true
}

func wireLost(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Wire[f.Of]
	if !ok || !e.H.Wires[k].DropV.Set || !e.Wires[k].Drop.Set {
		return why.Why{}, false
	}
	return why.Why{Name: "drop of wire " + f.Of + " lost elsewhere", Value: float64(e.H.Wires[k].DropV.V - e.Wires[k].Drop.V),
			Measure: why.Volts,
			Says:    "what was measured less what the wire explains: contacts, crimps, splices, the ground point",
			In: []why.Input{why.Given("measured", float64(e.H.Wires[k].DropV.V), why.Volts),
				e.From("drop of the wire", why.Figure{What: "wire.drop", Of: f.Of})}, Formula: func(in []float64) float64 {
				return in[0] - in[1]
			}},
		true
}

// feedAt is a feed by its id.
func feedAt(e why.Explainer, id string) (int, *model.Feed, *sheet.Feed, bool) {
	i, ok := e.Index.Feed[id]
	if !ok || !e.Feeds[i].Device.Set {
		return 0, nil, nil, false
	}
	return i, &e.H.Feeds[i], &e.Feeds[i], true
}

func feedLoad(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, fd, ok := feedAt(e, f.Of)
	if !ok || len(fd.Legs) == 0 {
		return why.Why{}, false
	}
	w := why.Why{Name: "load of feed " + f.Of, Value: float64(fd.Load), Measure: why.Amperes,
		Says: "what its wires carry, each as heat sees it, added up: whatever their timing, together they heat no more", Formula: why.Sum}
	for _, k := range fd.Legs {
		id := e.H.Wires[k].ID
		if _, known := e.Why(why.Figure{What: "wire.heats", Of: id}); known {
			w.In = append(w.In, e.From(id, why.Figure{What: "wire.heats", Of: id}))
		}
	}
	return w, len(w.In) > 0
}

func feedMost(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, fd, ok := feedAt(e, f.Of)
	if !ok {
		return why.Why{}, false
	}
	n := float64(fd.Outputs)
	return why.Why{Name: "what feed " + f.Of + " may carry", Value: float64(fd.Most), Measure: why.Amperes,
		Says: "its rating, times its outputs, times the share of it that may be used",
		In: []why.Input{why.Given("rating", float64(fd.Device.V.Rating), why.Amperes), why.Given("outputs", n, why.Count),
			why.Shop("share that may be used", float64(e.Limits.FeedLoadMax), why.Times, e.H.Rules.FeedLoadMax.Set)},
		Formula: func(in []float64) float64 { return in[0] * in[1] * in[2] }}, true
}

func feedOpens(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, fd, ok := feedAt(e, f.Of)
	if !ok {
		return why.Why{}, false
	}
	if fd.Device.V.Kind == protect.Electronic {
		return why.Why{Name: "current that opens feed " + f.Of, Value: float64(fd.Device.V.NeedsToOpen()), Measure: why.Amperes,
			Says: "the limit it is set to", In: []why.Input{why.Given("limit", float64(fd.Device.V.Rating), why.Amperes)},
			Formula: why.First}, true
	}
	return why.Why{Name: "current that is sure to open feed " + f.Of, Value: float64(fd.Device.V.NeedsToOpen()), Measure: why.Amperes,
		Says: "the least for which a longest time is stated, some minutes; below it a fuse may carry on for hours",
		In: []why.Input{why.Given("rating", float64(fd.Device.V.Rating), why.Amperes),
			why.LookUp("times its rating", float64(fd.Device.V.NeedsToOpen()/fd.Device.V.Rating), why.Times,
				catalogue.Origin{Source: "makers' sheets as quoted, from memory", Standing: catalogue.Memory})},
		Formula: func(in []float64) float64 { return in[0] * in[1] }}, true
}

// onFeed is a wire's place among those a feed protects.
func onFeed(e why.Explainer, f why.Figure) (i, n, k int, ok bool) {
	i, _, fd, ok := feedAt(e, f.Of)
	k, is := e.Index.Wire[f.Part]
	if !ok || !is {
		return 0, 0, 0, false
	}
	n = slices.Index(current.AllWires(fd), k)
	return i, n, k, n >= 0
}

// shorted is what a short on a wire of a feed does, where that is known.
func shorted(e why.Explainer, f why.Figure) (i, n, k int, v current.Shorted, ok bool) {
	i, n, k, ok = onFeed(e, f)
	if !ok {
		return i, n, k, v, false
	}
	v = current.ShortOf(e.Sheet, i, n, k)
	return i, n, k, v, v.Known
}

func shortFar(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, n, k, ok := onFeed(e, f)
	if !ok || e.Feeds[i].Far[n] <= 0 {
		return why.Why{}, false
	}
	volts := e.H.Head.SupplyV.V
	loop := float64(volts) / float64(e.Feeds[i].Far[n])
	out := why.Why{Name: "short at the far end of wire " + f.Part, Value: float64(e.Feeds[i].Far[n]), Measure: why.Amperes,
		Says: "supply over all resistance on the way: the supply's own where its dead short is given, the wires from the device to the " +
			"end, and the return where one is named; each wire at its rating, where it resists most",
		In: []why.Input{why.Given("supply", float64(volts), why.Volts)}}
	if s := float64(e.Feeds[i].Short); s > 0 {
		out.In = append(out.In, why.Given("the supply's own, by its dead short", s, why.Ohms))
		loop -= s
	}
	out.In = append(out.In, why.LookUp("the wires on the way", loop, why.Ohms,
		catalogue.Origin{Source: "worked out as their drop at 1 A", Standing: wires.OhmStanding(e.Wires[k].Entry)}))
	out.Formula = func(in []float64) float64 { return in[0] / why.Sum(in[1:]) }
	return out, true
}

func shortLets(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, n, _, v, ok := shorted(e, f)
	if !ok {
		return why.Why{}, false
	}
	dev := e.Feeds[i].Device.V
	if n >= len(e.Feeds[i].Legs) {
		dev.Rating = e.Feeds[i].All
	}
	_, t, _ := dev.Opens(v.At)
	amps := v.At
	says := "the current squared times the longest the device takes, at the short from the far end to the device that makes this the " +
		"most, of those it opens within five seconds"
	if dev.Kind != protect.Electronic && v.At > 6*dev.Rating {
		amps = 6 * dev.Rating
		says += "; above six times its rating a fuse lets no more through than there"
	}
	from := v.Origin
	return why.Why{Name: "what a short on wire " + f.Part + " lets through", Value: float64(v.Lets), Measure: why.Withstands, Says: says,
		In:      []why.Input{why.LookUp("current", float64(amps), why.Amperes, from), why.LookUp("for", float64(t), why.Seconds, from)},
		Formula: func(in []float64) float64 { return in[0] * in[0] * in[1] }}, true
}

func shortBears(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, k, v, ok := shorted(e, f)
	if !ok {
		return why.Why{}, false
	}
	ent := e.Wires[k].Entry
	start := why.Input{Name: "it starts at", Value: float64(v.From), Measure: why.Celsius,
		Origin: catalogue.Origin{Source: "its hottest, or the air", Standing: catalogue.Memory}}
	if e.Wires[k].HottestC.Set {
		start = e.From("it starts at its hottest", why.Figure{What: "wire.hottest", Of: f.Part})
	}
	return why.Why{Name: "what the conductor of wire " + f.Part + " bears", Value: float64(v.Bears), Measure: why.Withstands,
		Says: "k k S S with k = 226 times the root of ln(1 + (end - start) / (234.5 + start)): all heat stays in the copper, up to its " +
			"rating; good to five seconds",
		In: []why.Input{start, why.LookUp("up to its rating", float64(ent.RatedC), why.Celsius,
			catalogue.Origin{Source: ent.Source, Standing: wires.RatedStanding(ent)}), why.LookUp("copper", float64(ent.AreaMM2),
			why.Squares,
			ent.Origin), why.LookUp("k is", 226, why.Times,
			catalogue.Origin{Source: "IEC 60364-5-54, as quoted", Standing: catalogue.Published})},
		Formula: func(in []float64) float64 {
			return in[3] * in[3] * math.Log(1+(in[1]-in[0])/(234.5+in[0])) * in[2] * in[2]
		}}, true
}

// feedLeaves is what the feed of a wire leaves it.
func feedLeaves(e why.Explainer, k int, w why.Why) (why.Why, bool) {
	i := e.Wires[k].Guard.V.Feed
	id, fd := e.H.Feeds[i].ID, &e.Feeds[i]
	w.Says = "what its device may carry, less what its other wires do; of joined outputs no more than the share of one"
	w.In = []why.Input{e.From("feed "+id+" may carry", why.Figure{What: "feed.most", Of: id}),
		why.LookUp("its other wires", float64(fd.Load-e.Wires[k].Heats), why.Amperes,
			catalogue.Origin{Source: "their currents, added up", Standing: catalogue.House}),
		why.LookUp("share of one output", float64(fd.Device.V.Rating)*float64(e.Limits.FeedLoadMax), why.Amperes,
			catalogue.Origin{Source: "given in the file, and the share", Standing: catalogue.Practice})}
	if !slices.Contains(fd.Legs, k) {
		w.In = w.In[:2]
	}
	w.Formula = func(in []float64) float64 {
		v := math.Max(0, in[0]-in[1])
		if len(in) > 2 {
			v = math.Min(v, in[2])
		}
		return v
	}
	return w, true
}

// oneLimit is a limit that is only looked up.
func oneLimit(l sheet.Limit, w why.Why) (why.Why, bool) {
	w.Says = "the test current of the contact alone; with many loaded beside it less is allowed"
	if len(l.Where) > 6 && l.Where[:6] == "splice" {
		w.Says = "what the catalogue allows the splice"
	}
	w.In, w.Formula = []why.Input{why.LookUp("as the catalogue has it", float64(l.Amps), why.Amperes, l.Origin)}, why.First
	return w, unit.Finite(float64(l.Amps))
}
