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
		w := why.Why{Name: "current that comes back through wire " + f.Of, Value: float64(e.Wires[k].Heats), Measure: why.Amperes,
			Says: "No current is entered for it, so add the currents of the wires that name it as their return", Formula: why.Sum}
		for _, i := range wires.Serves(e.Sheet, k) {
			w.In = append(w.In, e.From(e.H.Wires[i].ID, why.Figure{What: "wire.heats", Of: e.H.Wires[i].ID}))
		}
		return w, true
	}
	w := why.Why{Name: "what wire " + f.Of + " carries as RMS current", Value: float64(e.Wires[k].Heats), Measure: why.Amperes,
		Says: "It is the current that is entered. It counts as always on",
		In:   []why.Input{why.Given("current", float64(mw.Amps.V), why.Amperes)}, Formula: why.First}
	if !wires.DutyOf(mw).Comes() {
		if mw.RestA.V > mw.Amps.V {
			w.In[0] = why.Given("current between pulses", float64(mw.RestA.V), why.Amperes)
		}
		return w, true
	}
	w.Says = fmt.Sprintf("It is the root of the mean of the current squared. The load is on for %s s at a time at most, and a conductor "+
		"needs much longer to warm up", sheet.Plain(float64(protect.AdiabaticFor)))
	w.In = append(w.In, why.Given("on for", float64(mw.OnS.V), why.Seconds),
		why.Given("repeated every", float64(mw.PeriodS.V), why.Seconds),
		why.Given("current between pulses", float64(mw.RestA.V), why.Amperes))
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
	return why.Why{Name: "voltage drop of wire " + f.Of + " lost elsewhere", Value: float64(e.H.Wires[k].DropV.V - e.Wires[k].Drop.V),
			Measure: why.Volts,
			Says: "Take the drop that was measured, less the drop of the wire. The rest is lost in contacts, crimps, splices or the " +
				"ground point",
			In: []why.Input{why.Given("measured", float64(e.H.Wires[k].DropV.V), why.Volts),
				e.From("voltage drop of the wire", why.Figure{What: "wire.drop", Of: f.Of})}, Formula: func(in []float64) float64 {
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
		Says: "Add the RMS currents of its wires. Whenever each is on, together they heat no more than this", Formula: why.Sum}
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
		Says: "Multiply its rating by its outputs and by the share that may be used",
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
			Says: "It is the limit that is set", In: []why.Input{why.Given("limit", float64(fd.Device.V.Rating), why.Amperes)},
			Formula: why.First}, true
	}
	return why.Why{Name: "current that is sure to open feed " + f.Of, Value: float64(fd.Device.V.NeedsToOpen()), Measure: why.Amperes,
		Says: "It is the lowest current for which makers state a longest time, some minutes. Below it a fuse may hold for hours",
		In: []why.Input{why.Given("rating", float64(fd.Device.V.Rating), why.Amperes),
			why.LookUp("factor on its rating", float64(fd.Device.V.NeedsToOpen()/fd.Device.V.Rating), why.Times,
				catalogue.Origin{Source: "makers' sheets as quoted, from memory", Standing: catalogue.Memory})},
		Formula: func(in []float64) float64 { return in[0] * in[1] }}, true
}

// onFeed is a wire's place among those a feed protects.
func onFeed(e why.Explainer, f why.Figure) (i, n, k int, ok bool) {
	i, _, fd, ok := feedAt(e, f.Of)
	k, is := e.Index.Wire[f.Part]
	if ok = ok && is; ok {
		n = slices.Index(current.AllWires(fd), k)
		ok = n >= 0
	}
	return i, n, k, ok
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
	out := why.Why{Name: "short-circuit current at the far end of wire " + f.Part, Value: float64(e.Feeds[i].Far[n]), Measure: why.Amperes,
		Says: "Divide the supply voltage by all resistance on the way: of the supply itself if its dead short is given, of the wires " +
			"from the fuse to the end, and of the return if one is named. Each wire counts at its rated temperature, where its " +
			"resistance is highest",
		In: []why.Input{why.Given("supply", float64(volts), why.Volts)}}
	if s := float64(e.Feeds[i].Short); s > 0 {
		out.In = append(out.In, why.Given("the supply itself, from its dead short", s, why.Ohms))
		loop -= s
	}
	out.In = append(out.In, why.LookUp("the wires on the way", loop, why.Ohms,
		catalogue.Origin{Source: "worked out from their drop at 1 A", Standing: wires.OhmStanding(e.Wires[k].Entry)}))
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
	says := "Square the current and multiply it by the longest time the fuse needs to open. Of all shorts from the far end to the fuse " +
		"that it opens within five seconds, the worst counts"
	if dev.Kind != protect.Electronic && v.At > 6*dev.Rating {
		amps = 6 * dev.Rating
		says += ". Above six times its rating a fuse lets no more through than at six times"
	}
	from := v.Origin
	return why.Why{Name: "energy that a short on wire " + f.Part + " lets through", Value: float64(v.Lets), Measure: why.Withstands,
		Says: says,
		In: []why.Input{why.LookUp("current", float64(amps), why.Amperes, from),
			why.LookUp("time to open", float64(t), why.Seconds, from)},
		Formula: func(in []float64) float64 { return in[0] * in[0] * in[1] }}, true
}

func shortBears(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, k, v, ok := shorted(e, f)
	if !ok {
		return why.Why{}, false
	}
	ent := e.Wires[k].Entry
	start := why.Input{Name: "it starts at", Value: float64(v.From), Measure: why.Celsius,
		Origin: catalogue.Origin{Source: "the hottest point of the wire, or the air", Standing: catalogue.Memory}}
	if e.Wires[k].HottestC.Set {
		start = e.From("it starts at its hottest point", why.Figure{What: "wire.hottest", Of: f.Part})
	}
	return why.Why{Name: "energy that the conductor of wire " + f.Part + " withstands", Value: float64(v.Bears), Measure: why.Withstands,
		Says: "It is k k S S, with k = 226 times the root of ln(1 + (end - start) / (234.5 + start)). All heat stays in the copper, " +
			"which ends at its rating. This holds for up to five seconds",
		In: []why.Input{start, why.LookUp("it ends at its rating", float64(ent.RatedC), why.Celsius,
			catalogue.Origin{Source: ent.Source, Standing: wires.RatedStanding(ent)}), why.LookUp("area of the copper",
			float64(ent.AreaMM2),
			why.Squares,
			ent.Origin), why.LookUp("factor of k", 226, why.Times,
			catalogue.Origin{Source: "IEC 60364-5-54, as quoted", Standing: catalogue.Published})},
		Formula: func(in []float64) float64 {
			return in[3] * in[3] * math.Log(1+(in[1]-in[0])/(234.5+in[0])) * in[2] * in[2]
		}}, true
}

// feedLeaves is what the feed of a wire leaves it.
func feedLeaves(e why.Explainer, k int, w why.Why) (why.Why, bool) {
	i := e.Wires[k].Guard.V.Feed
	id, fd := e.H.Feeds[i].ID, &e.Feeds[i]
	w.Says = "Take what its fuse may carry, less the currents of its other wires. With joined outputs it is no more than the share of " +
		"one output"
	w.In = []why.Input{e.From("feed "+id+" may carry", why.Figure{What: "feed.most", Of: id}),
		why.LookUp("its other wires", float64(fd.Load-e.Wires[k].Heats), why.Amperes,
			catalogue.Origin{Source: "their currents, added up", Standing: catalogue.House}),
		why.LookUp("share of one output", float64(fd.Device.V.Rating)*float64(e.Limits.FeedLoadMax), why.Amperes,
			catalogue.Origin{Source: "given in the file, times the share that may be used", Standing: catalogue.Practice})}
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
	w.Says = "It is the test current of one contact alone. If many contacts around it carry current, less is allowed"
	if len(l.Where) > 6 && l.Where[:6] == "splice" {
		w.Says = "The catalogue allows this for the splice"
	}
	w.In, w.Formula = []why.Input{why.LookUp("the catalogue gives this value", float64(l.Amps), why.Amperes, l.Origin)}, why.First
	return w, unit.Finite(float64(l.Amps))
}
