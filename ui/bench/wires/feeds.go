package wires

import (
	"fmt"
	"slices"

	"contralay/calc/formula/protect"
	"contralay/calc/phase/current"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// Fuses and electronic limits: what each feeds, carries and protects.

// The screens of feeds.
const (
	FeedsKind desk.Kind = "feeds"
	FeedKind            = desk.KindFeed
)

// deviceText is what a feed is: "blade 5 A".
func deviceText(f *model.Feed) string {
	t := words.OrDash(string(f.Device.V))
	if f.Amps.Set {
		t += " " + words.Trim(float64(f.Amps.V)) + " A"
	}
	if f.Outputs.V > 1 {
		t += fmt.Sprintf(" x %d", f.Outputs.V)
	}
	return t
}

// loadText is what a feed carries of what it may.
func loadText(m *desk.Model, i int) string {
	f := &m.Sheet.Feeds[i]
	if !f.Device.Set {
		return "-"
	}
	return fmt.Sprintf("%s of %s A", unit.Fixed(f.Load, 1), unit.Fixed(f.Most, 1))
}

// feedsRow opens the list of feeds.
func feedsRow(m *desk.Model) desk.Row {
	text := "protection: none yet"
	if n := len(m.H.Feeds); n > 0 {
		text = fmt.Sprintf("protection: %d feeds", n)
	}
	mark := ""
	for _, f := range m.H.Feeds {
		if k := m.MarkFor(f.ID); k == "!" || mark == "" {
			mark = k
		}
	}
	return desk.Row{Key: "feeds", Text: text, Mark: mark, Detail: "Enter lists fuses and electronic limits, their load and their wires",
		Enter: func(m *desk.Model) { m.Show(FeedsKind, "") }}
}

// FeedsPage lists the feeds.
func FeedsPage(m *desk.Model, _ int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"A feed is a fuse or an electronic limit, with the wires on it.",
		"Choose it on the page of the wire."}, Empty: "No feed yet. Open a wire and choose one in its row \"feed\". Esc goes back"}
	columns := kit.GivenColumns([]kit.Column[int]{
		{Head: "feed", Least: 4, Cell: func(i int) string { return m.H.Feeds[i].ID }},
		{Head: "name", Least: 19, Cell: func(i int) string { return m.H.Feeds[i].Name.V }},
		{Head: "device", Least: 23, Cell: func(i int) string { return deviceText(&m.H.Feeds[i]) }},
		{Head: "carries", Least: 15, Cell: func(i int) string { return loadText(m, i) }},
		{Head: "wires", Cell: func(i int) string { return fmt.Sprint(len(m.H.Feeds[i].Wires)) }},
	}, m.Cfg.ASCII)
	p.Cols = columns.Head()
	for i := range m.H.Feeds {
		id := m.H.Feeds[i].ID
		p.Rows = append(p.Rows, desk.Row{Key: id, Mark: m.MarkFor(id), Text: columns.Line(i), Detail: "Enter opens it",
			Enter: func(m *desk.Model) { m.Show(FeedKind, id) }, Why: desk.FiguresOf(id, "feed.load", "feed.most")})
	}
	return p
}

// FeedPage is one feed: what it is, what it carries, and the wires that it protects.
func FeedPage(m *desk.Model, _ int, id string) desk.Page {
	i, ok := m.Sheet.Index.Feed[id]
	if !ok {
		return desk.Page{Empty: "feed " + id + " is gone. Esc goes back"}
	}
	f, fd := &m.H.Feeds[i], &m.Sheet.Feeds[i]
	p := desk.Page{Lines: []string{"feed " + id + "   " + f.Name.V}, Why: desk.FiguresOf(id, "feed.load", "feed.most", "feed.opens")}
	if fd.Device.Set {
		mem := ""
		if fd.Device.V.Kind != protect.Electronic {
			mem = "~"
		}
		p.Lines = append(p.Lines, fmt.Sprintf("carries %s; opens for certain from %s%s A", loadText(m, i),
			unit.Fixed(fd.Device.V.NeedsToOpen(), 1), mem))
	}
	there := func(m *desk.Model) bool { _, ok := m.Sheet.Index.Feed[id]; return ok }
	add := func(r desk.Row) { p.Rows = append(p.Rows, r) }
	line := func(label, value string) string { return fmt.Sprintf("%-12s %s", label, words.OrDash(value)) }
	add(desk.Row{Key: "device", Text: line("device", string(f.Device.V)), Detail: "+ - blade fuse, large blade fuse, electronic limit",
		Step: func(m *desk.Model, by int) {
			d, _ := words.Around(model.Protections, f.Device.V, by)
			m.Change(m.H.EditFeed(m.Sheet.Index.Feed[id], func(f *model.Feed) { f.Device = model.Some(d) }), string(d))
		}})
	rating := desk.Row{Key: "rating", Text: line("rating", ampsOf(f.Amps)+" A"),
		Detail: "+ - the next rating that is made. For an electronic limit, whole amperes",
		Why:    desk.FiguresOf(id, "feed.most"),
		Step:   func(m *desk.Model, by int) { stepRating(m, id, by) },
		Field: &desk.Field{Label: "rating of feed " + id, Unit: "A", Value: ampsOf(f.Amps), Number: true,
			Set: func(m *desk.Model, text string) error {
				return m.SetNumber(text, 0.1, 1000, "A", func(v float64) *model.Harness {
					return m.H.EditFeed(m.Sheet.Index.Feed[id], func(f *model.Feed) { f.Amps = model.Some(unit.Ampere(v)) })
				})
			}}}
	if made := protect.Ratings(fd.Device.V.Kind); made != nil {
		rating.Enter = func(m *desk.Model) {
			m.Open(desk.ChooseScreen("rating", there, func(m *desk.Model) []desk.Choice { return ratingChoices(made) },
				func(m *desk.Model) string { return ampsOf(m.H.Feeds[m.Sheet.Index.Feed[id]].Amps) },
				func(m *desk.Model, v string) {
					a, _ := unit.ParseNumber(v)
					m.Change(m.H.EditFeed(m.Sheet.Index.Feed[id], func(f *model.Feed) { f.Amps = model.Some(unit.Ampere(a)) }),
						"rating "+v+" A")
				}, nil))
		}
	}
	add(rating)
	add(desk.Row{Key: "outputs", Text: line("outputs", fmt.Sprint(max(f.Outputs.Or(1), 1))),
		Detail: "How many outputs are joined to one load. Size each leg for its own limit", Step: func(m *desk.Model, by int) {
			n := max(1, f.Outputs.Or(1)+by)
			m.Change(m.H.EditFeed(m.Sheet.Index.Feed[id], func(f *model.Feed) { f.Outputs = model.Some(n) }), fmt.Sprintf("%d outputs", n))
		}})
	if fd.Device.V.Kind == protect.Electronic {
		add(desk.Row{Key: "trip", Text: line("opens within", secondsOf(f.TripS)+" s"),
			Detail: "How fast it opens a short, from its maker's sheet. - means not known", Step: func(m *desk.Model, by int) {
				stepNumber(m, secondsValue(f.TripS), by, 100, "s", func(v float64) *model.Harness {
					return m.H.EditFeed(m.Sheet.Index.Feed[id], func(f *model.Feed) { f.TripS = model.Some(unit.Second(v)) })
				})
			}, Field: feedNumber(m, id, "time it takes to open a short", "s", secondsOf(f.TripS), 0, 100,
				func(f *model.Feed, v float64) { f.TripS = model.Some(unit.Second(v)) })})
	}
	before := ""
	if f.BeforeMM.Set {
		before = m.Sys.Length(f.BeforeMM.V)
	}
	add(desk.Row{Key: "before", Text: line("wire before", words.OrDash(before)+" "+m.Sys.Name()),
		Detail: "Unprotected wire between the supply and the fuse", Step: func(m *desk.Model, by int) {
			v := max(0, unit.Written(f.BeforeMM.V+10*unit.Millimetre(by)))
			m.Change(m.H.EditFeed(m.Sheet.Index.Feed[id], func(f *model.Feed) { f.BeforeMM = model.Some(v) }),
				"set to "+m.Sys.Length(v)+" "+m.Sys.Name())
		}, Field: &desk.Field{Label: "unprotected wire before " + id, Unit: m.Sys.Name(), Value: before, Number: true,
			Set: func(m *desk.Model, text string) error {
				v, err := m.Sys.Parse(text)
				if err != nil {
					return err
				}
				if v < 0 || v > 20_000 {
					return fmt.Errorf("%s %s is out of range: 0 to %s %s", text, m.Sys.Name(), m.Sys.Length(20_000), m.Sys.Name())
				}
				m.Change(m.H.EditFeed(m.Sheet.Index.Feed[id], func(f *model.Feed) { f.BeforeMM = model.Some(v) }),
					"set to "+text+" "+m.Sys.Name())
				return nil
			}}})
	add(desk.Row{Key: "name", Text: line("name", f.Name.V),
		Field: &desk.Field{Label: "name of feed " + id, Value: f.Name.V, Set: func(m *desk.Model, text string) error {
			m.Change(m.H.EditFeed(m.Sheet.Index.Feed[id], func(f *model.Feed) { f.Name = model.Some(text) }), "set to "+text)
			return nil
		}}})
	add(desk.AllValuesRow("feed", id))
	for n, k := range slices.Concat(fd.Legs, fd.Beyond, fd.Back) {
		how := "downstream"
		switch {
		case n < len(fd.Legs):
			how = "direct"
		case n >= len(fd.Legs)+len(fd.Beyond):
			how = "return"
		}
		add(guardRow(m, id, i, n, k, how))
	}
	for _, g := range sheet.Worst(m.Sheet.Snags) {
		if g.Where != id {
			continue
		}
		mark := map[sheet.Level]string{sheet.Stop: "!", sheet.Warn: "?", sheet.Note: "-"}[g.Level]
		says := m.Sys.Says(g.Says)
		for k, t := range kit.Wrap(says, max(20, m.W-9)) {
			if k > 0 {
				mark = ""
			}
			add(desk.Row{Key: "snag " + g.Rule + fmt.Sprint(k), Mark: mark, Text: t, Detail: says, Why: desk.SnagReasons(m.Sheet, g)})
		}
	}
	add(desk.Row{Key: "drop", Text: "remove this feed", Detail: "Enter removes it. Its wires stay. Backspace brings it back",
		Enter: func(m *desk.Model) {
			m.Back()
			m.Change(m.H.RemoveFeed(m.Sheet.Index.Feed[id]), "feed "+id+" removed")
		}})
	return p
}

// guardRow is one wire that a feed protects, directly or over splices.
func guardRow(m *desk.Model, feed string, i, n, k int, how string) desk.Row {
	w := &m.H.Wires[k]
	id := w.ID
	r := desk.Row{Key: "wire " + id, Id: id, Mark: m.MarkFor(id), Enter: func(m *desk.Model) { m.Show(desk.KindWire, id) },
		WhyOf: func() []desk.Reason {
			return append(append(desk.FiguresOfPart(feed, id, "short.far", "short.lets", "short.bears"),
				desk.FiguresOf(id, "wire.heats")...),
				desk.LimitReasons(m.Sheet, id)...)
		}}
	if how == "direct" {
		r.Drop = func(m *desk.Model) { m.Change(m.H.Feed(id, -1), "wire "+id+" taken off feed "+feed) }
	}
	may := "-"
	if b, ok := current.BoundBeside(m.Sheet, k); ok {
		may = unit.Fixed(b.Amps, 1) + words.MemMark(b.Standing == catalogue.Memory)
	}
	r.Text = fmt.Sprintf("%s %s %s %s A, may carry %s", draw.Fit(id, 5, m.Cfg.ASCII), draw.Fit(w.Signal.V, 17, m.Cfg.ASCII),
		draw.Fit(how, 11, m.Cfg.ASCII), desk.CarriesText(m.Sheet, k), may)
	if far, ok := current.ShortA(m.Sheet, i, n); ok {
		r.Text += fmt.Sprintf(", short: %s A", unit.Fixed(far, 0))
	}
	if lets, bears, mem, ok := current.ShortBears(m.Sheet, i, n); ok {
		r.Detail = fmt.Sprintf("A short passes %s%s A2s; the conductor withstands %s%s. Enter opens it",
			unit.Fixed(lets, 0), words.MemMark(mem), unit.Fixed(bears, 0), words.MemMark(mem))
	}
	return r
}

func ampsOf(a model.Opt[unit.Ampere]) string {
	if !a.Set {
		return "-"
	}
	return words.Trim(float64(a.V))
}

func secondsOf(a model.Opt[unit.Second]) string {
	if !a.Set {
		return "-"
	}
	return words.Trim(float64(a.V))
}

func secondsValue(a model.Opt[unit.Second]) string {
	if !a.Set {
		return ""
	}
	return secondsOf(a)
}

func ratingChoices(made []unit.Ampere) []desk.Choice {
	var out []desk.Choice
	for _, r := range made {
		v := words.Trim(float64(r))
		out = append(out, desk.Choice{Value: v, Says: v + " A~", Why: []desk.Reason{{Made: func() (why.Why, bool) {
			return why.LookedUp("rating", float64(r), why.Amperes,
				catalogue.Origin{Source: "made to ISO 8820-3, from memory", Standing: catalogue.Memory}), true
		}}}})
	}
	return out
}

// stepRating takes the next rating that is made, or a whole ampere more or less.
func stepRating(m *desk.Model, id string, by int) {
	i := m.Sheet.Index.Feed[id]
	v := m.H.Feeds[i].Amps.V
	next := unit.Ampere(max(1, int(float64(v))+by))
	if made := protect.Ratings(m.Sheet.Feeds[i].Device.V.Kind); made != nil {
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
		m.Tell("no further rating is made")
		return
	}
	m.Change(m.H.EditFeed(i, func(f *model.Feed) { f.Amps = model.Some(next) }), "rating "+words.Trim(float64(next))+" A")
}

func feedNumber(m *desk.Model, id, label, name, value string, least, most float64, put func(f *model.Feed, v float64)) *desk.Field {
	if value == "-" {
		value = ""
	}
	return &desk.Field{Label: label, Unit: name, Value: value, Number: true, Set: func(m *desk.Model, text string) error {
		return m.SetNumber(text, least, most, name, func(v float64) *model.Harness {
			return m.H.EditFeed(m.Sheet.Index.Feed[id], func(f *model.Feed) { put(f, v) })
		})
	}}
}

// feedRow is the feed of a wire: the one it is on, or the one it hangs on.
func feedRow(m *desk.Model, id string) desk.Row {
	k := m.Sheet.Index.Wire[id]
	c := &m.Sheet.Wires[k]
	text, now := "-", ""
	switch i, on := m.Sheet.Index.FeedOf[id]; {
	case on:
		now = m.H.Feeds[i].ID
		text = now + "  " + m.H.Feeds[i].Name.V + ", " + deviceText(&m.H.Feeds[i])
	case c.Guard.Set && c.Guard.V.Feed >= 0:
		f := &m.H.Feeds[c.Guard.V.Feed]
		text = "via a splice " + f.ID + "  " + f.Name.V + ", " + deviceText(f)
	case c.Guard.Set:
		text = "several, via splices"
	}
	there := func(m *desk.Model) bool { _, ok := m.Sheet.Index.Wire[id]; return ok }
	return desk.Row{Key: "feed", Id: id, Text: fmt.Sprintf("%-12s %s", "feed", text),
		Detail: "The fuse or electronic limit that feeds it. Enter lists them or makes one", Enter: func(m *desk.Model) {
			m.Open(desk.ChooseScreen("feed", there, func(m *desk.Model) []desk.Choice { return feedChoices(m, id) },
				func(m *desk.Model) string { return now }, func(m *desk.Model, v string) { putOnFeed(m, id, v) }, nil))
		}}
}

const noFeed, newFeed = "none", "new "

func feedChoices(m *desk.Model, id string) []desk.Choice {
	out := []desk.Choice{}
	for i := range m.H.Feeds {
		f := &m.H.Feeds[i]
		out = append(out, desk.Choice{Value: f.ID, Says: f.ID + "  " + f.Name.V + ", " + deviceText(f), Used: len(f.Wires)})
	}
	for _, d := range model.Protections {
		out = append(out, desk.Choice{Value: newFeed + string(d), Says: "a new feed, " + string(d)})
	}
	return append(out, desk.Choice{Value: noFeed, Says: "none"})
}

// putOnFeed puts a wire on a feed, a new one with the least rating that its current
// leaves a share of, or on none.
func putOnFeed(m *desk.Model, id, v string) {
	if v == noFeed {
		m.Change(m.H.Feed(id, -1), "wire "+id+" is on no feed")
		return
	}
	if i, ok := m.Sheet.Index.Feed[v]; ok {
		m.Change(m.H.Feed(id, i), "wire "+id+" is on feed "+v)
		return
	}
	device := model.Protection(v[len(newFeed):])
	k := m.Sheet.Index.Wire[id]
	need := m.Sheet.Wires[k].Heats / unit.Ampere(max(m.Sheet.Limits.FeedLoadMax, 0.01))
	amps := max(1, unit.Ampere(unit.UpTo(float64(need), 1)))
	if made := protect.Ratings(current.DeviceKinds[device]); made != nil {
		amps = made[len(made)-1]
		for _, r := range made {
			if r >= need {
				amps = r
				break
			}
		}
	}
	h := m.H.AddFeed(model.Feed{Device: model.Some(device), Amps: model.Some(amps)}, id)
	m.Change(h, fmt.Sprintf("feed %s, %s", h.Feeds[len(h.Feeds)-1].ID, deviceText(&h.Feeds[len(h.Feeds)-1])))
}
