package why

import (
	"fmt"
	"math"
	"slices"

	"contralay/calc/formula/protect"
	"contralay/calc/phase/current"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How the figures of duty and protection are made.

func (e Explainer) wireHeats(f Figure) (Why, bool) {
	k, ok := e.X.Wire[f.Of]
	if !ok || !wires.Carries(e.Sheet, k) {
		return Why{}, false
	}
	mw := &e.H.Wires[k]
	if !mw.Amps.Set {
		w := Why{Name: "what comes back through wire " + f.Of, Value: float64(e.Wires[k].Heats), Measure: Amperes,
			Says: "no current is entered for it: what the wires carry that name it as their return", make: sum}
		for _, i := range wires.Serves(e.Sheet, k) {
			w.In = append(w.In, e.from(e.H.Wires[i].ID, Figure{What: "wire.heats", Of: e.H.Wires[i].ID}))
		}
		return w, true
	}
	w := Why{Name: "what wire " + f.Of + " carries as heat sees it", Value: float64(e.Wires[k].Heats), Measure: Amperes,
		Says: "as it is entered: it counts as always on",
		In:   []Input{given("current", float64(mw.Amps.V), Amperes)}, make: first0}
	if !wires.DutyOf(mw).Comes() {
		if mw.RestA.V > mw.Amps.V {
			w.In[0] = given("current in between", float64(mw.RestA.V), Amperes)
		}
		return w, true
	}
	w.Says = fmt.Sprintf("the root of the mean of its square: on for %s s at most at a time, which is short beside the time a conductor "+
		"takes to warm up", sheet.Plain(float64(protect.AdiabaticFor)))
	w.In = append(w.In, given("on for", float64(mw.OnS.V), Seconds), given("in every", float64(mw.PeriodS.V), Seconds),
		given("in between", float64(mw.RestA.V), Amperes))
	w.make = func(in []float64) float64 {
		return math.Sqrt((in[0]*in[0]*in[1] + in[3]*in[3]*(in[2]-in[1])) / in[2])
	}
	return w, true
}

func (e Explainer) wireLost(f Figure) (Why, bool) {
	k, ok := e.X.Wire[f.Of]
	if !ok || !e.H.Wires[k].DropV.Set || !e.Wires[k].DropKnown {
		return Why{}, false
	}
	return Why{Name: "drop of wire " + f.Of + " lost elsewhere", Value: float64(e.H.Wires[k].DropV.V - e.Wires[k].Drop), Measure: Volts,
			Says: "what was measured less what the wire explains: contacts, crimps, splices, the ground point",
			In: []Input{given("measured", float64(e.H.Wires[k].DropV.V), Volts),
				e.from("drop of the wire", Figure{What: "wire.drop", Of: f.Of})}, make: func(in []float64) float64 {
				return in[0] - in[1]
			}},
		true
}

// feedAt is a feed by its id.
func (e Explainer) feedAt(id string) (int, *model.Feed, *sheet.Feed, bool) {
	i, ok := e.X.Feed[id]
	if !ok || !e.Feeds[i].Known {
		return 0, nil, nil, false
	}
	return i, &e.H.Feeds[i], &e.Feeds[i], true
}

func (e Explainer) feedLoad(f Figure) (Why, bool) {
	_, _, fd, ok := e.feedAt(f.Of)
	if !ok || len(fd.Legs) == 0 {
		return Why{}, false
	}
	w := Why{Name: "load of feed " + f.Of, Value: float64(fd.Load), Measure: Amperes,
		Says: "what its wires carry, each as heat sees it, added up: whatever their timing, together they heat no more", make: sum}
	for _, k := range fd.Legs {
		id := e.H.Wires[k].ID
		if _, known := e.Why(Figure{What: "wire.heats", Of: id}); known {
			w.In = append(w.In, e.from(id, Figure{What: "wire.heats", Of: id}))
		}
	}
	return w, len(w.In) > 0
}

func (e Explainer) feedMost(f Figure) (Why, bool) {
	_, _, fd, ok := e.feedAt(f.Of)
	if !ok {
		return Why{}, false
	}
	n := float64(fd.Outputs)
	return Why{Name: "what feed " + f.Of + " may carry", Value: float64(fd.Most), Measure: Amperes,
		Says: "its rating, times its outputs, times the share of it that may be used",
		In: []Input{given("rating", float64(fd.Device.Rating), Amperes), given("outputs", n, Count),
			shop("share that may be used", float64(e.Limits.FeedLoadMax), Times, e.H.Rules.FeedLoadMax.Set)},
		make: func(in []float64) float64 { return in[0] * in[1] * in[2] }}, true
}

func (e Explainer) feedOpens(f Figure) (Why, bool) {
	_, _, fd, ok := e.feedAt(f.Of)
	if !ok {
		return Why{}, false
	}
	if fd.Device.Kind == protect.Electronic {
		return Why{Name: "current that opens feed " + f.Of, Value: float64(fd.Device.NeedsToOpen()), Measure: Amperes,
			Says: "the limit it is set to", In: []Input{given("limit", float64(fd.Device.Rating), Amperes)}, make: first0}, true
	}
	return Why{Name: "current that is sure to open feed " + f.Of, Value: float64(fd.Device.NeedsToOpen()), Measure: Amperes,
		Says: "the least for which a longest time is stated, some minutes; below it a fuse may carry on for hours",
		In: []Input{given("rating", float64(fd.Device.Rating), Amperes),
			known("times its rating", float64(fd.Device.NeedsToOpen()/fd.Device.Rating), Times,
				catalogue.Origin{Source: "makers' sheets as quoted, from memory", Standing: catalogue.Memory})},
		make: func(in []float64) float64 { return in[0] * in[1] }}, true
}

// onFeed is a wire's place among those a feed protects.
func (e Explainer) onFeed(f Figure) (i, n, k int, ok bool) {
	i, _, fd, ok := e.feedAt(f.Of)
	k, is := e.X.Wire[f.Part]
	if !ok || !is {
		return 0, 0, 0, false
	}
	n = slices.Index(current.AllWires(fd), k)
	return i, n, k, n >= 0
}

// shorted is what a short on a wire of a feed does, where that is known.
func (e Explainer) shorted(f Figure) (i, n, k int, v current.Shorted, ok bool) {
	i, n, k, ok = e.onFeed(f)
	if !ok {
		return i, n, k, v, false
	}
	v = current.ShortOf(e.Sheet, i, n, k)
	return i, n, k, v, v.Known
}

func (e Explainer) shortFar(f Figure) (Why, bool) {
	i, n, k, ok := e.onFeed(f)
	if !ok || e.Feeds[i].Far[n] <= 0 {
		return Why{}, false
	}
	volts := e.H.Head.SupplyV.V
	loop := float64(volts) / float64(e.Feeds[i].Far[n])
	out := Why{Name: "short at the far end of wire " + f.Part, Value: float64(e.Feeds[i].Far[n]), Measure: Amperes,
		Says: "supply over all resistance on the way: the supply's own where its dead short is given, the wires from the device to the " +
			"end, and the return where one is named; each wire at its rating, where it resists most",
		In: []Input{given("supply", float64(volts), Volts)}}
	if s := float64(e.Feeds[i].Short); s > 0 {
		out.In = append(out.In, given("the supply's own, by its dead short", s, Ohms))
		loop -= s
	}
	out.In = append(out.In, known("the wires on the way", loop, Ohms,
		catalogue.Origin{Source: "worked out as their drop at 1 A", Standing: wires.OhmStanding(e.Wires[k].Entry)}))
	out.make = func(in []float64) float64 { return in[0] / sum(in[1:]) }
	return out, true
}

func (e Explainer) shortLets(f Figure) (Why, bool) {
	i, n, _, v, ok := e.shorted(f)
	if !ok {
		return Why{}, false
	}
	dev := e.Feeds[i].Device
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
	return Why{Name: "what a short on wire " + f.Part + " lets through", Value: float64(v.Lets), Measure: Withstands, Says: says,
		In:   []Input{known("current", float64(amps), Amperes, from), known("for", float64(t), Seconds, from)},
		make: func(in []float64) float64 { return in[0] * in[0] * in[1] }}, true
}

func (e Explainer) shortBears(f Figure) (Why, bool) {
	_, _, k, v, ok := e.shorted(f)
	if !ok {
		return Why{}, false
	}
	ent := e.Wires[k].Entry
	start := Input{Name: "it starts at", Value: float64(v.From), Measure: Celsius,
		Origin: catalogue.Origin{Source: "its hottest, or the air", Standing: catalogue.Memory}}
	if e.Wires[k].HottestKnown {
		start = e.from("it starts at its hottest", Figure{What: "wire.hottest", Of: f.Part})
	}
	return Why{Name: "what the conductor of wire " + f.Part + " bears", Value: float64(v.Bears), Measure: Withstands,
		Says: "k k S S with k = 226 times the root of ln(1 + (end - start) / (234.5 + start)): all heat stays in the copper, up to its " +
			"rating; good to five seconds",
		In: []Input{start, known("up to its rating", float64(ent.RatedC), Celsius,
			catalogue.Origin{Source: ent.Source, Standing: wires.RatedStanding(ent)}), known("copper", float64(ent.AreaMM2), Squares,
			ent.Origin), known("k is", 226, Times, catalogue.Origin{Source: "IEC 60364-5-54, as quoted", Standing: catalogue.Published})},
		make: func(in []float64) float64 {
			return in[3] * in[3] * math.Log(1+(in[1]-in[0])/(234.5+in[0])) * in[2] * in[2]
		}}, true
}

// feedLeaves is what the feed of a wire leaves it.
func (e Explainer) feedLeaves(k int, w Why) (Why, bool) {
	i := e.Wires[k].Guard.By
	id, fd := e.H.Feeds[i].ID, &e.Feeds[i]
	w.Says = "what its device may carry, less what its other wires do; of joined outputs no more than the share of one"
	w.In = []Input{e.from("feed "+id+" may carry", Figure{What: "feed.most", Of: id}),
		known("its other wires", float64(fd.Load-e.Wires[k].Heats), Amperes,
			catalogue.Origin{Source: "their currents, added up", Standing: catalogue.House}),
		known("share of one output", float64(fd.Device.Rating)*float64(e.Limits.FeedLoadMax), Amperes,
			catalogue.Origin{Source: "given in the file, and the share", Standing: catalogue.Practice})}
	if !slices.Contains(fd.Legs, k) {
		w.In = w.In[:2]
	}
	w.make = func(in []float64) float64 {
		v := math.Max(0, in[0]-in[1])
		if len(in) > 2 {
			v = math.Min(v, in[2])
		}
		return v
	}
	return w, true
}

// oneLimit is a limit that is only looked up.
func oneLimit(l sheet.Limit, w Why) (Why, bool) {
	w.Says = "the test current of the contact alone; with many loaded beside it less is allowed"
	if len(l.By) > 6 && l.By[:6] == "splice" {
		w.Says = "what the catalogue allows the splice"
	}
	w.In, w.make = []Input{known("as the catalogue has it", float64(l.Amps), Amperes, l.Origin)}, first0
	return w, unit.Finite(float64(l.Amps))
}
