package current

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/formula/protect"
	"contralay/calc/formula/wire"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// DeviceKinds is each kind of protection in the terms of its formulas.
var DeviceKinds = map[model.Protection]protect.Kind{
	model.ProtectionBlade: protect.Blade, model.ProtectionLargeBlade: protect.LargeBlade, model.ProtectionElectronic: protect.Electronic,
}

// FeedWires finds what each device feeds and protects.
func FeedWires(s *sheet.Sheet) {
	if len(s.H.Feeds) == 0 {
		return
	}
	s.Feeds = make([]sheet.Feed, len(s.H.Feeds))
	wiresAt := map[string][]int{} // splice → wires
	for k := range s.H.Wires {
		for _, e := range []string{s.H.Wires[k].From.V, s.H.Wires[k].To.V} {
			if p, ok := s.Index.End(e); ok && p.Splice != "" {
				wiresAt[p.Splice] = append(wiresAt[p.Splice], k)
			}
		}
	}
	for i := range s.H.Feeds {
		f, out := &s.H.Feeds[i], &s.Feeds[i]
		kind, is := DeviceKinds[f.Device.V]
		out.Device = model.Opt[protect.Device]{V: protect.Device{Kind: kind, Rating: f.Amps.V, Trip: f.TripS.V}, Set: is && f.Amps.V > 0}
		if v, a := s.H.Head.SupplyV.V, s.H.Head.ShortA.V; v > 0 && a > 0 {
			out.Near, out.Short = a, unit.Ohm(float64(v)/float64(a))
		}
		type way struct {
			k        int
			ohm      unit.Ohm
			back     unit.Ohm // of the return of the last wire that names one
			known    bool
			isBranch bool
		}
		var queue []way
		seen := map[int]bool{}
		for _, id := range f.Wires {
			if k, ok := s.Index.Wire[id]; ok && !seen[k] {
				seen[k] = true
				out.Legs = append(out.Legs, k)
				out.Load += s.Wires[k].Heats
				queue = append(queue, way{k: k, known: true})
			}
		}
		out.Outputs = 1
		if kind == protect.Electronic { // fuses are not joined
			out.Outputs = max(1, min(f.Outputs.Or(1), len(out.Legs)))
		}
		out.All = f.Amps.V * unit.Ampere(out.Outputs)
		out.Most = out.All * unit.Ampere(s.Limits.FeedLoadMax)
		far := map[int]unit.Ampere{}
		for len(queue) > 0 {
			w := queue[0]
			queue = queue[1:]
			if w.isBranch {
				out.Beyond = append(out.Beyond, w.k)
			}
			w.known = w.known && s.Wires[w.k].Known && s.Wires[w.k].Finished > 0
			w.ohm += hotOhm(s, w.k)
			r, returns := s.Index.Wire[s.H.Wires[w.k].Return.V]
			if returns = returns && r != w.k; returns {
				w.back = hotOhm(s, r)
				w.known = w.known && s.Wires[r].Known && s.Wires[r].Finished > 0
			}
			if v := s.H.Head.SupplyV.V; w.known && v > 0 {
				if all := w.ohm + w.back + out.Short; all > 0 {
					far[w.k] = unit.Ampere(float64(v) / float64(all))
				}
			}
			if returns && !slices.Contains(out.Back, r) {
				out.Back = append(out.Back, r)
				far[r] = far[w.k]
			} else if returns {
				far[r] = min(far[r], far[w.k])
			}
			for _, e := range []string{s.H.Wires[w.k].From.V, s.H.Wires[w.k].To.V} {
				p, ok := s.Index.End(e)
				if !ok || p.Splice == "" {
					continue
				}
				for _, next := range wiresAt[p.Splice] {
					if _, fed := s.Index.FeedOf[s.H.Wires[next].ID]; !seen[next] && !fed {
						seen[next] = true
						queue = append(queue, way{next, w.ohm, w.back, w.known, true})
					}
				}
			}
		}
		out.Back = slices.DeleteFunc(out.Back, func(r int) bool { return seen[r] })
		for _, k := range AllWires(out) {
			out.Far = append(out.Far, far[k])
		}
		if !out.Device.Set {
			continue
		}
		for n, k := range slices.Concat(out.Legs, out.Beyond) {
			w := &s.Wires[k]
			amps := out.Device.V.Rating // a leg of joined outputs has its own limit
			if n >= len(out.Legs) {
				amps = out.All
			}
			if w.Guard.Set { // by another feed
				w.Guard = model.Some(sheet.Guard{Feed: -1, Amps: w.Guard.V.Amps + amps})
			} else {
				w.Guard = model.Some(sheet.Guard{Feed: i, Amps: amps})
			}
		}
	}
}

// AllWires is every wire the device protects: those that come out of it, hang on them, and
// bring their current back.
func AllWires(f *sheet.Feed) []int { return slices.Concat(f.Legs, f.Beyond, f.Back) }

// hotOhm is the resistance of a wire at its rating, the most it has.
func hotOhm(s *sheet.Sheet, k int) unit.Ohm {
	c := &s.Wires[k]
	r, _ := wire.ResistanceAt(c.Entry.OhmPerKm, c.Entry.RatedC)
	return unit.Ohm(float64(r) * float64(c.Finished) / 1e6)
}

// feedLimit is what the devices of a wire leave it, the others as entered.
func feedLimit(s *sheet.Sheet, k int) (sheet.Limit, bool) {
	if !s.Wires[k].Guard.Set || s.Wires[k].Guard.V.Feed < 0 {
		return sheet.Limit{}, false
	}
	i := s.Wires[k].Guard.V.Feed
	f := &s.Feeds[i]
	left := f.Most - f.Load
	if slices.Contains(f.Legs, k) {
		left = min(f.Most-(f.Load-s.Wires[k].Heats), f.Device.V.Rating*unit.Ampere(s.Limits.FeedLoadMax))
	} else {
		left += s.Wires[k].Heats
	}
	return sheet.Limit{Amps: max(left, 0), Where: "feed " + s.H.Feeds[i].ID, Feed: true,
		Origin: catalogue.Origin{Source: "given in the file, times the share that may be used", Standing: catalogue.Practice}}, true
}

// SayFeeds tells what is wrong with the devices: what they carry, what they protect,
// and what a short does.
func SayFeeds(s *sheet.Sheet) {
	if s.Unrated || len(s.Feeds) == 0 {
		return
	}
	for i := range s.Feeds {
		sayFeed(s, i)
	}
	for k := range s.Wires {
		w := &s.Wires[k]
		if b, ok := boundWithoutFeed(s, k); ok && w.Guard.Set && w.Guard.V.Feed < 0 && w.Guard.V.Amps > b.Amps {
			w.FeedBurns = true
			s.Say(sheet.Warn, "feed.joined", s.H.Wires[k].ID,
				fmt.Sprintf("Several feeds together can pass %s A all the time, but it may carry only %s A",
					sheet.PlainAmps(w.Guard.V.Amps),
					sheet.PlainAmps(b.Amps)))
		}
	}
	if s.H.Head.SupplyV.V <= 0 {
		s.Say(sheet.Note, "feed.supply", "harness", "supply_v is not given, so shorts are not judged")
	}
	// A wire that ends at a device where a protected one ends may lie behind it: its
	// current comes through the load.
	behind := map[string]bool{}
	for k := range s.H.Wires {
		if s.Wires[k].Guard.Set {
			for _, t := range devices(s, k) {
				behind[t] = true
			}
		}
	}
	for i := range s.Feeds { // where the feeds begin nothing lies behind a load
		for _, k := range s.Feeds[i].Legs {
			if e, ok := s.Index.End(s.H.Wires[k].From.V); ok {
				delete(behind, e.Termination)
			}
		}
	}
	for k := range s.H.Wires {
		w := &s.H.Wires[k]
		if _, named := s.Index.FeedOf[w.ID]; w.Role.V != model.RolePower || s.Wires[k].Guard.Set || w.Amps.V <= 0 || named {
			continue
		}
		if !slices.ContainsFunc(devices(s, k), func(t string) bool { return behind[t] }) {
			s.Say(sheet.Note, "feed.none", w.ID, "No feed of this sheet protects it")
		}
	}
}

// devices is the terminations a wire ends at that are one device's own: without a
// connector of the catalogue, which many share.
func devices(s *sheet.Sheet, k int) []string {
	var out []string
	for _, text := range ends(&s.H.Wires[k]) {
		e, _ := s.Index.End(text)
		if t, ok := s.Index.Termination[e.Termination]; ok && s.H.Terminations[t].Insert.V == "" {
			out = append(out, e.Termination)
		}
	}
	return out
}

func sayFeed(s *sheet.Sheet, i int) {
	f, out := &s.H.Feeds[i], &s.Feeds[i]
	if !out.Device.Set {
		s.Say(sheet.Note, "feed.device", f.ID,
			"It has no device or no rating, so nothing on it is judged. Give the device (blade, large blade or electronic) and amps")
		return
	}
	a := func(v unit.Ampere) string { return sheet.PlainAmps(v) + " A" }
	if made := protect.Ratings(out.Device.V.Kind); made != nil && !slices.Contains(made, out.Device.V.Rating) {
		s.Say(sheet.Warn, "feed.rating", f.ID, fmt.Sprintf("Nobody makes a %s of %s. Ratings: %s", f.Device.V, a(out.Device.V.Rating),
			ratingsText(made)))
	}
	if out.Device.V.Kind == protect.Electronic && out.Device.V.Rating != unit.Ampere(math.Trunc(float64(out.Device.V.Rating))) {
		s.Say(sheet.Warn, "feed.rating", f.ID,
			fmt.Sprintf("An electronic limit is set in whole amperes, not to %s", a(out.Device.V.Rating)))
	}
	if f.BeforeMM.V > s.Limits.BeforeMaxMM {
		s.Say(sheet.Warn, "feed.before", f.ID,
			fmt.Sprintf("The wire before it is unprotected for %s mm; the shop allows %s mm", unit.Fixed(f.BeforeMM.V, 0),
				unit.Fixed(s.Limits.BeforeMaxMM, 0)))
	}
	switch n := f.Outputs.Or(1); {
	case n > 1 && out.Device.V.Kind != protect.Electronic:
		s.Say(sheet.Warn, "feed.outputs", f.ID,
			fmt.Sprintf("Do not join %d fuses: the load does not share evenly. Give each its own feed", n))
	case n > len(out.Legs) && n > 1:
		s.Say(sheet.Warn, "feed.outputs", f.ID,
			fmt.Sprintf("It has %d outputs and %d wires. Each output needs a leg of its own, so %d count",
				n, len(out.Legs), out.Outputs))
	}
	if len(out.Legs) == 0 {
		s.Say(sheet.Note, "feed.empty", f.ID, "It feeds nothing: put a wire on it, or remove it")
	}
	if out.Load > out.Most {
		s.Say(sheet.Warn, "feed.load", f.ID, fmt.Sprintf("It carries %s of %s: at most %s, %s %% of its rating", a(out.Load), a(out.All),
			a(out.Most),
			unit.Fixed(100*s.Limits.FeedLoadMax, 0)))
	}
	sayStart(s, i)
	sayGuards(s, i)
}

// sayStart tells whether a load that comes and goes can open the device while the
// others are on.
func sayStart(s *sheet.Sheet, i int) {
	f, out := &s.H.Feeds[i], &s.Feeds[i]
	outputs := unit.Ampere(out.Outputs)
	for _, k := range out.Legs {
		w := &s.H.Wires[k]
		d := wires.DutyOf(w)
		if !d.Comes() {
			continue
		}
		all := (out.Load - s.Wires[k].Heats + w.Amps.V) / outputs
		least, _, opens := out.Device.V.Opens(all)
		if out.Device.V.Kind == protect.Electronic && all > out.Device.V.Rating && !opens {
			least, opens = 0, true // it passes its limit; how fast it opens is not known
		}
		if least < w.OnS.V || opens && out.Device.V.Kind == protect.Electronic && least <= w.OnS.V {
			s.Say(sheet.Warn, "feed.start", f.ID, fmt.Sprintf("It may open when %s comes on: %s A for %s s, with the others on", w.ID,
				sheet.PlainAmps(all), sheet.Plain(float64(w.OnS.V))))
			return
		}
	}
}

// sayGuards tells which wires the device does not protect: from being overloaded for
// long, from a short that never opens it, from what a short lets through.
func sayGuards(s *sheet.Sheet, i int) {
	f, out := &s.H.Feeds[i], &s.Feeds[i]
	var over, never, burnt []string
	level := sheet.Note
	for n, k := range AllWires(out) {
		w := &s.Wires[k]
		id := s.H.Wires[k].ID
		if !wires.Rates(s, k) {
			continue
		}
		amps := w.Guard.V.Amps
		if n >= len(out.Legs)+len(out.Beyond) {
			amps = out.All // a return bears what its feed lets through
		}
		if b, ok := boundWithoutFeed(s, k); ok && amps > b.Amps && (w.Guard.V.Feed >= 0 || !w.Guard.Set) {
			over = append(over, fmt.Sprintf("%s (%s A)", id, sheet.PlainAmps(b.Amps)))
			w.FeedBurns = true
		}
		switch v := ShortOf(s, i, n, k); {
		case v.never:
			never, w.FeedBurns = append(never, fmt.Sprintf("%s (%s A)", id, sheet.PlainAmps(v.far))), true
		case v.burns:
			burnt, w.FeedBurns = append(burnt, id), true
			level = max(level, sheet.AtMost(v.Standing, sheet.Stop))
		}
	}
	rating := sheet.PlainAmps(out.All) + " A"
	if d := out.Device.V; d.Kind == protect.Electronic && s.H.Head.SupplyV.V > 0 {
		switch {
		case d.Trip <= 0:
			s.Say(sheet.Note, "feed.trip", f.ID, "How fast it opens a short is not given (trip_s), so shorts are not judged")
		case out.Near <= 0:
			s.Say(sheet.Note, "feed.near", f.ID, "The supply's dead short is not given (short_a), so only a short at the far end is judged")
		}
	}
	if len(over) > 0 {
		s.Say(sheet.Warn, "feed.wire", f.ID, fmt.Sprintf("At %s it can pass more current all the time than these wires may carry: %s",
			rating,
			listText(over)))
	}
	if len(never) > 0 {
		s.Say(sheet.Warn, "feed.never", f.ID, fmt.Sprintf("A short at the far end may be too weak to open it; it takes %s A: %s",
			sheet.PlainAmps(out.Device.V.NeedsToOpen()), listText(never)))
	}
	if len(burnt) > 0 {
		s.Say(level, "feed.short", f.ID,
			fmt.Sprintf("A short heats the conductor past its rating before the device opens: %s", listText(burnt)))
	}
}

// BoundBeside is the least of a wire's limits but what its feed leaves it.
func BoundBeside(s *sheet.Sheet, k int) (sheet.Limit, bool) { return boundWithoutFeed(s, k) }

// ShortA is the least short at the far end of the n-th wire of a feed, those that hang
// on it by splices after its own; false where the supply or the way is not known.
func ShortA(s *sheet.Sheet, feed, n int) (unit.Ampere, bool) {
	f := &s.Feeds[feed]
	if !f.Device.Set || n >= len(f.Far) {
		return 0, false
	}
	return f.Far[n], f.Far[n] > 0
}

// ShortBears is what a short on the n-th wire of a feed lets through before the device
// opens, what the conductor bears up to its rating, and whether that rests on memory.
func ShortBears(s *sheet.Sheet, feed, n int) (lets, bears unit.AmpereSqSecond, memory, ok bool) {
	f := &s.Feeds[feed]
	all := AllWires(f)
	if !f.Device.Set || n >= len(all) {
		return 0, 0, false, false
	}
	v := ShortOf(s, feed, n, all[n])
	return v.Lets, v.Bears, v.Standing == catalogue.Memory, v.Known
}

// Shorted is what a short on a wire does.
type Shorted struct {
	far, At unit.Ampere // the least short, and the one that lets most through
	Lets    unit.AmpereSqSecond
	Bears   unit.AmpereSqSecond
	Known   bool // lets and bears are
	never   bool // it may never open
	burns   bool
	From    unit.Celsius
	catalogue.Origin
}

// ShortOf is what a short anywhere on the n-th wire of a feed, wire k, does: from the
// least current, at its far end, to one right behind the device.
func ShortOf(s *sheet.Sheet, i, n, k int) Shorted {
	out := &s.Feeds[i]
	v := Shorted{far: out.Far[n]}
	if v.far <= 0 {
		return v
	}
	d := out.Device.V
	if n >= len(out.Legs) {
		d.Rating = out.All // beyond a splice joined outputs feed a short together
	}
	if need := d.NeedsToOpen(); v.far <= need && d.Kind == protect.Electronic || v.far < need {
		v.never = true
		return v
	}
	near := out.Near
	switch {
	case d.Kind == protect.Electronic && near <= 0:
		near = v.far // what the supply drives into a nearer short is not known
	case near <= 0:
		near = max(v.far, d.Rating*100)
	}
	e := s.Wires[k].Entry
	v.From = wires.Warmest(s, k)
	lets, worstAmps, ok := d.LetThrough(min(v.far, near), near)
	bears, can := protect.Withstand(e.AreaMM2, v.From, e.RatedC)
	v.Lets, v.At, v.Bears, v.Known = lets, worstAmps, bears, ok && can
	v.burns = v.Known && lets > bears || ok && !can && e.AreaMM2 > 0 || d.Kind == protect.Electronic && d.Trip > protect.AdiabaticFor
	v.Origin = catalogue.Origin{Source: "fuse times as makers' sheets are quoted",
		Standing: catalogue.Weakest(e.Standing, wires.RatedStanding(e))}
	if d.Kind == protect.Electronic {
		v.Source = "given in the file"
	}
	return v
}

// boundWithoutFeed is the least of a wire's limits but those of its feed.
func boundWithoutFeed(s *sheet.Sheet, k int) (sheet.Limit, bool) {
	best, ok := sheet.Limit{}, false
	for _, l := range s.Wires[k].Limits {
		if !l.Feed && (!ok || l.Amps < best.Amps) {
			best, ok = l, true
		}
	}
	return best, ok
}

func ratingsText(made []unit.Ampere) string {
	var out []string
	for _, r := range made {
		out = append(out, sheet.PlainAmps(r))
	}
	return strings.Join(out, ", ") + " A"
}

// listText names some things and counts the rest.
func listText(all []string) string {
	if len(all) > 6 {
		return fmt.Sprintf("%s and %d more", strings.Join(all[:5], ", "), len(all)-5)
	}
	return strings.Join(all, ", ")
}
