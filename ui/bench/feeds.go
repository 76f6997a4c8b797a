package bench

import (
	"fmt"
	"slices"

	"contralay/calc"
	"contralay/calc/protect"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/draw"
)

// Fuses and electronic limits: what each feeds, carries and protects.

// deviceText is what a feed is: "blade 5 A".
func deviceText(f *model.Feed) string {
	t := orDash(f.Device.V)
	if f.Amps.Set {
		t += " " + trim(float64(f.Amps.V)) + " A"
	}
	if f.Outputs.V > 1 {
		t += fmt.Sprintf(" x %d", f.Outputs.V)
	}
	return t
}

// loadText is what a feed carries of what it may.
func (m *Model) loadText(i int) string {
	f := &m.sheet.Feeds[i]
	if !f.Known {
		return "-"
	}
	return fmt.Sprintf("%s of %s A", unit.Fixed(float64(f.Load), 1), unit.Fixed(float64(f.Most), 1))
}

// feedsRow opens the list of feeds.
func (m *Model) feedsRow() row {
	text := "protection: none yet"
	if n := len(m.h.Feeds); n > 0 {
		text = fmt.Sprintf("protection: %d feeds", n)
	}
	mark := ""
	for _, f := range m.h.Feeds {
		if k := m.markFor(f.ID); k == "!" || mark == "" {
			mark = k
		}
	}
	return row{key: "feeds", text: text, mark: mark, detail: "Enter lists fuses and electronic limits, what they carry and protect", enter: func(m *Model) { m.open(feedsScreen()) }}
}

func feedsScreen() screen {
	return screen{name: "feeds", page: func(m *Model, w int) page {
		p := page{lines: []string{"Feeds: a fuse or an electronic limit each, and the wires that come out of it.", "A wire gets one on its own page."}, empty: "no feed yet: open a wire, its feed row makes one; Esc goes back"}
		p.cols = fmt.Sprintf("%-5s%-20s%-24s%-16s%s", "feed", "name", "device", "carries", "wires")
		for i := range m.h.Feeds {
			f := &m.h.Feeds[i]
			id := f.ID
			p.rows = append(p.rows, row{key: id, mark: m.markFor(id), text: fmt.Sprintf("%s %s %s %s %d", draw.Fit(id, 4, m.cfg.ASCII), draw.Fit(f.Name.V, 19, m.cfg.ASCII), draw.Fit(deviceText(f), 23, m.cfg.ASCII), draw.Fit(m.loadText(i), 15, m.cfg.ASCII), len(f.Wires)),
				detail: "Enter opens it", enter: func(m *Model) { m.open(feedScreen(id)) }, why: figs(id, 0, "", "feed.load", "feed.most")})
		}
		return p
	}}
}

func feedScreen(id string) screen {
	return screen{name: "feed", of: id, page: func(m *Model, w int) page { return m.feedPage(id) }}
}

func (m *Model) feedPage(id string) page {
	i, ok := m.sheet.X.Feed[id]
	if !ok {
		return page{empty: "feed " + id + " is gone; Esc goes back"}
	}
	f, fd := &m.h.Feeds[i], &m.sheet.Feeds[i]
	p := page{lines: []string{"feed " + id + "   " + f.Name.V}, why: figs(id, 0, "", "feed.load", "feed.most", "feed.opens")}
	if fd.Known {
		mem := ""
		if fd.Device.Kind != protect.Electronic {
			mem = "~"
		}
		p.lines = append(p.lines, fmt.Sprintf("carries %s; sure to open from %s%s A", m.loadText(i), unit.Fixed(float64(fd.Device.NeedsToOpen()), 1), mem))
	}
	there := func(m *Model) bool { _, ok := m.sheet.X.Feed[id]; return ok }
	add := func(r row) { p.rows = append(p.rows, r) }
	line := func(label, value string) string { return fmt.Sprintf("%-12s %s", label, orDash(value)) }
	add(row{key: "device", text: line("device", f.Device.V), detail: "+ - blade, large blade (another table), electronic", step: func(m *Model, by int) {
		d, _ := around(devices[:], f.Device.V, by)
		m.change(m.h.EditFeed(m.sheet.X.Feed[id], func(f *model.Feed) { f.Device = model.Some(d) }), d)
	}})
	rating := row{key: "rating", text: line("rating", ampsOf(f.Amps)+" A"), detail: "+ - the next that is made; of an electronic one the limit it is set to, in whole amperes", why: figs(id, 0, "", "feed.most"),
		step: func(m *Model, by int) { m.stepRating(id, by) },
		field: &field{label: "rating of feed " + id, unit: "A", value: ampsOf(f.Amps), number: true, set: func(m *Model, text string) error {
			return m.setNumber(text, 0.1, 1000, "A", func(v float64) *model.Harness {
				return m.h.EditFeed(m.sheet.X.Feed[id], func(f *model.Feed) { f.Amps = model.Some(unit.Ampere(v)) })
			})
		}}}
	if made := protect.Ratings(fd.Device.Kind); made != nil {
		rating.enter = func(m *Model) {
			m.open(chooseScreen("rating", there, func(m *Model) []choice { return ratingChoices(made) }, func(m *Model) string { return ampsOf(m.h.Feeds[m.sheet.X.Feed[id]].Amps) },
				func(m *Model, v string) {
					a, _ := unit.ParseNumber(v)
					m.change(m.h.EditFeed(m.sheet.X.Feed[id], func(f *model.Feed) { f.Amps = model.Some(unit.Ampere(a)) }), "rating "+v+" A")
				}, nil))
		}
	}
	add(rating)
	add(row{key: "outputs", text: line("outputs", fmt.Sprint(max(f.Outputs.Or(1), 1))), detail: "how many are joined to one load; each leg is sized for its own limit", step: func(m *Model, by int) {
		n := max(1, f.Outputs.Or(1)+by)
		m.change(m.h.EditFeed(m.sheet.X.Feed[id], func(f *model.Feed) { f.Outputs = model.Some(n) }), fmt.Sprintf("%d outputs", n))
	}})
	if fd.Device.Kind == protect.Electronic {
		add(row{key: "trip", text: line("opens within", secondsOf(f.TripS)+" s"), detail: "of a short, from its maker's sheet; - not known", step: func(m *Model, by int) {
			m.stepNumber(secondsValue(f.TripS), by, 100, "s", func(v float64) *model.Harness {
				return m.h.EditFeed(m.sheet.X.Feed[id], func(f *model.Feed) { f.TripS = model.Some(unit.Second(v)) })
			})
		}, field: m.feedNumber(id, "time it takes to open a short", "s", secondsOf(f.TripS), 0, 100, func(f *model.Feed, v float64) { f.TripS = model.Some(unit.Second(v)) })})
	}
	before := ""
	if f.BeforeMM.Set {
		before = m.sys.Length(f.BeforeMM.V)
	}
	add(row{key: "before", text: line("run before", orDash(before)+" "+m.sys.Name()), detail: "unprotected wire between supply and device", step: func(m *Model, by int) {
		v := max(0, f.BeforeMM.V+10*unit.Millimetre(by))
		m.change(m.h.EditFeed(m.sheet.X.Feed[id], func(f *model.Feed) { f.BeforeMM = model.Some(v) }), "set to "+m.sys.Length(v)+" "+m.sys.Name())
	}, field: &field{label: "unprotected run before " + id, unit: m.sys.Name(), value: before, number: true, set: func(m *Model, text string) error {
		v, err := m.sys.Parse(text)
		if err != nil {
			return err
		}
		if v < 0 || v > 20_000 {
			return fmt.Errorf("%s %s is out of range: 0 to %s %s", text, m.sys.Name(), m.sys.Length(20_000), m.sys.Name())
		}
		m.change(m.h.EditFeed(m.sheet.X.Feed[id], func(f *model.Feed) { f.BeforeMM = model.Some(v) }), "set to "+text+" "+m.sys.Name())
		return nil
	}}})
	add(row{key: "name", text: line("name", f.Name.V), field: &field{label: "name of feed " + id, value: f.Name.V, set: func(m *Model, text string) error {
		m.change(m.h.EditFeed(m.sheet.X.Feed[id], func(f *model.Feed) { f.Name = model.Some(text) }), "set to "+text)
		return nil
	}}})
	for n, k := range slices.Concat(fd.Legs, fd.Beyond, fd.Back) {
		how := "hangs on it"
		switch {
		case n < len(fd.Legs):
			how = "comes out"
		case n >= len(fd.Legs)+len(fd.Beyond):
			how = "comes back"
		}
		add(m.guardRow(id, i, n, k, how))
	}
	for _, g := range calc.Worst(m.sheet.Snags) {
		if g.Where != id {
			continue
		}
		mark := map[calc.Level]string{calc.Stop: "!", calc.Warn: "?", calc.Note: "-"}[g.Level]
		for k, t := range wrap(g.Says, max(20, m.w-9)) {
			if k > 0 {
				mark = ""
			}
			add(row{key: "snag " + g.Rule + fmt.Sprint(k), mark: mark, text: t, detail: g.Says, why: m.snagReasons(g)})
		}
	}
	add(row{key: "drop", text: "take this feed away", detail: "Enter does; its wires stay. Backspace brings it back", enter: func(m *Model) {
		m.back()
		m.change(m.h.RemoveFeed(m.sheet.X.Feed[id]), "feed "+id+" taken away")
	}})
	return p
}

// guardRow is one wire that a feed protects, directly or over splices.
func (m *Model) guardRow(feed string, i, n, k int, how string) row {
	w := &m.h.Wires[k]
	id := w.ID
	r := row{key: "wire " + id, id: id, mark: m.markFor(id), enter: func(m *Model) { m.open(wireScreen(id)) },
		whyOf: func() []reason {
			return append(append(figs(feed, 0, id, "short.far", "short.lets", "short.bears"), figs(id, 0, "", "wire.heats")...), m.limitReasons(id)...)
		}}
	if how == "comes out" {
		r.drop = func(m *Model) { m.change(m.h.Feed(id, -1), "wire "+id+" taken off feed "+feed) }
	}
	may := "-"
	if b, ok := m.sheet.BoundBeside(k); ok {
		may = unit.Fixed(float64(b.Amps), 1) + memMark(b.Standing == catalogue.Memory)
	}
	r.text = fmt.Sprintf("%s %s %s %s A, may carry %s", draw.Fit(id, 5, m.cfg.ASCII), draw.Fit(w.Signal.V, 17, m.cfg.ASCII), draw.Fit(how, 11, m.cfg.ASCII), carriesText(m.sheet, k), may)
	if far, ok := m.sheet.ShortA(i, n); ok {
		r.text += fmt.Sprintf(", shorted %s", unit.Fixed(float64(far), 0))
	}
	if lets, bears, mem, ok := m.sheet.ShortBears(i, n); ok {
		r.detail = fmt.Sprintf("a short lets %s%s A2s through, its conductor bears %s%s; Enter opens the wire", unit.Fixed(float64(lets), 0), memMark(mem), unit.Fixed(float64(bears), 0), memMark(mem))
	}
	return r
}

func memMark(mem bool) string { return map[bool]string{true: "~", false: ""}[mem] }

var devices = [...]string{"blade", "large blade", "electronic"}

func ampsOf(a model.Opt[unit.Ampere]) string {
	if !a.Set {
		return "-"
	}
	return trim(float64(a.V))
}

func secondsOf(a model.Opt[unit.Second]) string {
	if !a.Set {
		return "-"
	}
	return trim(float64(a.V))
}

func secondsValue(a model.Opt[unit.Second]) string {
	if !a.Set {
		return ""
	}
	return secondsOf(a)
}

func ratingChoices(made []unit.Ampere) []choice {
	var out []choice
	for _, r := range made {
		v := trim(float64(r))
		out = append(out, choice{value: v, says: v + " A~", why: []reason{{made: func() (calc.Why, bool) {
			return calc.LookedUp("rating", float64(r), calc.Amperes, catalogue.Origin{Source: "made to ISO 8820-3, from memory", Standing: catalogue.Memory}), true
		}}}})
	}
	return out
}

// stepRating takes the next rating that is made, or a whole ampere more or less.
func (m *Model) stepRating(id string, by int) {
	i := m.sheet.X.Feed[id]
	v := m.h.Feeds[i].Amps.V
	next := unit.Ampere(max(1, int(float64(v))+by))
	if made := protect.Ratings(m.sheet.Feeds[i].Device.Kind); made != nil {
		next = v
		for k := range made {
			if by > 0 && made[k] > v {
				next = made[k]
				break
			}
			if n := len(made) - 1 - k; by < 0 && made[n] < v {
				next = made[n]
				break
			}
		}
	}
	if next == v {
		m.tell("that is the last that is made")
		return
	}
	m.change(m.h.EditFeed(i, func(f *model.Feed) { f.Amps = model.Some(next) }), "rating "+trim(float64(next))+" A")
}

func (m *Model) feedNumber(id, label, name, value string, least, most float64, put func(f *model.Feed, v float64)) *field {
	if value == "-" {
		value = ""
	}
	return &field{label: label, unit: name, value: value, number: true, set: func(m *Model, text string) error {
		return m.setNumber(text, least, most, name, func(v float64) *model.Harness {
			return m.h.EditFeed(m.sheet.X.Feed[id], func(f *model.Feed) { put(f, v) })
		})
	}}
}

// feedRow is the feed of a wire: the one it is on, or the one it hangs on.
func (m *Model) feedRow(id string) row {
	k := m.sheet.X.Wire[id]
	c := &m.sheet.Wires[k]
	text, now := "-", ""
	switch i, on := m.sheet.X.FeedOf[id]; {
	case on:
		now = m.h.Feeds[i].ID
		text = now + "  " + m.h.Feeds[i].Name.V + ", " + deviceText(&m.h.Feeds[i])
	case c.Guarded && c.Guard.By >= 0:
		f := &m.h.Feeds[c.Guard.By]
		text = "over a splice " + f.ID + "  " + f.Name.V + ", " + deviceText(f)
	case c.Guarded:
		text = "over splices, several"
	}
	there := func(m *Model) bool { _, ok := m.sheet.X.Wire[id]; return ok }
	return row{key: "feed", id: id, text: fmt.Sprintf("%-12s %s", "feed", text), detail: "the fuse or electronic limit it comes out of; Enter lists them, and makes a new one", enter: func(m *Model) {
		m.open(chooseScreen("feed", there, func(m *Model) []choice { return m.feedChoices(id) }, func(m *Model) string { return now }, func(m *Model, v string) { m.putOnFeed(id, v) }, nil))
	}}
}

const noFeed, newFeed = "none", "new "

func (m *Model) feedChoices(id string) []choice {
	out := []choice{}
	for i := range m.h.Feeds {
		f := &m.h.Feeds[i]
		out = append(out, choice{value: f.ID, says: f.ID + "  " + f.Name.V + ", " + deviceText(f), used: len(f.Wires)})
	}
	for _, d := range devices {
		out = append(out, choice{value: newFeed + d, says: "a new feed, " + d})
	}
	return append(out, choice{value: noFeed, says: "none"})
}

// putOnFeed puts a wire on a feed, a new one with the least rating that its current
// leaves a share of, or on none.
func (m *Model) putOnFeed(id, v string) {
	if v == noFeed {
		m.change(m.h.Feed(id, -1), "wire "+id+" is on no feed")
		return
	}
	if i, ok := m.sheet.X.Feed[v]; ok {
		m.change(m.h.Feed(id, i), "wire "+id+" is on feed "+v)
		return
	}
	device := v[len(newFeed):]
	k := m.sheet.X.Wire[id]
	need := m.sheet.Wires[k].Heats / unit.Ampere(max(m.sheet.Limits.FeedLoadMax, 0.01))
	amps := max(1, unit.Ampere(unit.UpTo(float64(need), 1)))
	if made := protect.Ratings(map[string]protect.Kind{"blade": protect.Blade, "large blade": protect.LargeBlade, "electronic": protect.Electronic}[device]); made != nil {
		amps = made[len(made)-1]
		for _, r := range made {
			if r >= need {
				amps = r
				break
			}
		}
	}
	h := m.h.AddFeed(model.Feed{Device: model.Some(device), Amps: model.Some(amps)}, id)
	m.change(h, fmt.Sprintf("feed %s, %s", h.Feeds[len(h.Feeds)-1].ID, deviceText(&h.Feeds[len(h.Feeds)-1])))
}
