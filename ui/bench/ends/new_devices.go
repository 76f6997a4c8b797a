package ends

import (
	"fmt"
	"slices"

	"contralay/calc/query/add"
	"contralay/model/catalogue"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// deviceForm is devices on their way: nothing of them is in the harness until they are taken.
type deviceForm struct {
	ask  add.DevicesAsk
	made struct { // what would be made, for the ask it was made for
		of  string
		got add.Added
		err error
	}
}

// mostDevices is more than one kind ever comes in on a vehicle.
const mostDevices = 48

// chooseDevice lists the groups of kinds; at is the breakout they hang on, "" where there is none.
func chooseDevice(m *desk.Model, at string) {
	*desk.State[deviceForm](m) = deviceForm{ask: add.DevicesAsk{At: at}}
	m.Show(GroupsKind, "")
}

// GroupsPage is the groups of kinds of device.
func GroupsPage(m *desk.Model, _ int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"Which device? A number and Enter take a row."}}
	var rows []desk.Row
	for _, g := range m.Sheet.Cat.DeviceGroups() {
		var some []string
		for _, d := range m.Sheet.Cat.DevicesOf(g) {
			some = append(some, d.Names[0])
		}
		rows = append(rows, desk.Row{Key: g, Text: fmt.Sprintf("%-24s %s", g, words.Plural(len(some), "kind", "kinds")),
			Detail: words.Few(some), Enter: func(m *desk.Model) { m.Show(GroupKind, g) }})
	}
	p.Rows = desk.Numbered(rows)
	return p
}

// GroupPage is the kinds of one group, each under every name it goes by.
func GroupPage(m *desk.Model, _ int, group string) desk.Page {
	p := desk.Page{Lines: []string{"Which kind of device? " + words.Capital(group) + ". A number and Enter take a row."}}
	var rows []desk.Row
	for _, d := range m.Sheet.Cat.DevicesOf(group) {
		for _, name := range d.Names {
			rows = append(rows, desk.Row{Key: d.ID + " " + name, Text: name, Detail: kindText(&d),
				WhyOf: func() []desk.Reason { return kindReasons(&d) },
				Enter: func(m *desk.Model) { openDevice(m, d, name) }})
		}
	}
	p.Rows = desk.Numbered(rows)
	return p
}

// kindText is what a kind brings, in a line.
func kindText(d *catalogue.Device) string {
	text := words.Plural(d.Cavities, "cavity", "cavities")
	if d.Outside != "" {
		text += "; not rated here: " + d.Outside
	}
	if d.Ask != "" {
		text += "; ask: " + d.Ask
	}
	return text
}

// kindReasons are the numbers of a kind's text.
func kindReasons(d *catalogue.Device) []desk.Reason {
	return named(kindText(d), d.Names[0], catalogue.Origin{Source: d.Layout.From, Standing: d.Layout.Standing})
}

func openDevice(m *desk.Model, d catalogue.Device, name string) {
	f := desk.State[deviceForm](m)
	f.ask = add.DevicesAsk{Kind: d.ID, Name: name, At: f.ask.At, Feed: add.FeedSplice, Controller: source(m, f.ask.At)}
	f.setCount(1)
	m.Show(DeviceKind, d.ID+" "+name)
}

// DevicePage is devices before they are taken: how many, their legs, how they are fed, and
// every guess that is made for them.
func DevicePage(m *desk.Model, _ int, _ string) desk.Page {
	f := desk.State[deviceForm](m)
	d, known := m.Sheet.Cat.Device(f.ask.Kind)
	if !known {
		return desk.Page{Empty: "No device is being made. Esc goes back"}
	}
	p := desk.Page{Lines: []string{f.ask.Name + ": nothing is added before you take it.", kindText(&d)}, Why: kindReasons(&d)}
	p.Rows = append(p.Rows, feedRows(m, f, &d)...)
	p.Start = len(p.Rows)
	p.Rows = append(p.Rows, desk.Row{Key: "count", Text: fmt.Sprintf("how many     %d", f.ask.Count), Detail: "Digits or + - say how many",
		Step: func(m *desk.Model, by int) { f.setCount(stepCount(m, f.ask.Count, by)) },
		Field: &desk.Field{Label: "how many", Number: true, Next: true, Set: func(m *desk.Model, text string) error {
			n, err := counted(text, "devices", mostDevices)
			if err == nil {
				f.setCount(n)
				m.Tell(words.Plural(n, "device", "devices") + words.Either(f.ask.At == "", "", ". Type the length of each leg"))
			}
			return err
		}}})
	if f.ask.At != "" {
		for k := range f.ask.LengthsMM {
			p.Rows = append(p.Rows, desk.Row{Key: fmt.Sprint("leg ", k),
				Text:   fmt.Sprintf("leg %-8d %s", k+1, lengthText(m, f.ask.LengthsMM[k])),
				Detail: "Type its length from " + f.ask.At + ". You may measure it later",
				Field: &desk.Field{Label: fmt.Sprintf("length of leg %d", k+1), Unit: m.Sys.Name(), Number: true, Next: true,
					Set: func(m *desk.Model, text string) error {
						v, err := length(m, text)
						if err == nil {
							f.ask.LengthsMM[k] = v
							m.Tell(fmt.Sprintf("leg %d: %s", k+1, lengthText(m, v)))
						}
						return err
					}}})
		}
	}
	got, err := f.preview(m)
	take := desk.Row{Key: "take", Text: fmt.Sprintf("take %s", words.Either(f.ask.Count == 1, "it", fmt.Sprintf("all %d", f.ask.Count))),
		Detail: summary(got), Does: "take", Enter: takeDevices}
	if err != nil {
		take.Mark, take.Detail = "!", err.Error()
	}
	p.Rows = append(p.Rows, take)
	p.Rows = append(p.Rows, guessRows(m, got)...)
	return p
}

// feedRows say where the wires of the devices go.
func feedRows(m *desk.Model, f *deviceForm, d *catalogue.Device) []desk.Row {
	var to []string
	for i := range m.H.Terminations {
		to = append(to, m.H.Terminations[i].ID)
	}
	to = append(to, "")
	rows := []desk.Row{{Key: "controller", Text: "wires go to  " + words.OrDash(f.ask.Controller),
		Detail: "+ - which connector takes them; with none they keep an open end",
		Step:   func(_ *desk.Model, by int) { f.ask.Controller, _ = words.Around(to, f.ask.Controller, by) }}}
	if slices.ContainsFunc(d.Carries, func(c catalogue.DeviceCavity) bool { return c.Feed != "" }) {
		rows = append(rows, desk.Row{Key: "feed",
			Text:   "fed by       " + words.Either(f.ask.Feed == add.FeedSplice, "one wire and a splice", "a wire each"),
			Detail: "+ - one wire to a splice at " + f.ask.At + ", or a wire each from the connector",
			Step:   func(_ *desk.Model, by int) { f.ask.Feed, _ = words.Around(add.Feedings, f.ask.Feed, by) }})
	}
	return rows
}

// stepCount is one more or one less of something, and says where that ends.
func stepCount(m *desk.Model, n, by int) int {
	to := max(1, min(n+by, mostDevices))
	m.Tell(words.Either(to == n, fmt.Sprintf("1 to %d", mostDevices), fmt.Sprint(to)))
	return to
}

func (f *deviceForm) setCount(n int) {
	f.ask.Count = max(1, min(n, mostDevices))
	for len(f.ask.LengthsMM) < f.ask.Count {
		f.ask.LengthsMM = append(f.ask.LengthsMM, 0)
	}
	f.ask.LengthsMM = slices.Clone(f.ask.LengthsMM[:f.ask.Count])
}

// preview is what would be made, worked out once for an ask.
func (f *deviceForm) preview(m *desk.Model) (add.Added, error) {
	of := fmt.Sprintf("%p %+v", m.H, f.ask)
	if f.made.of != of {
		f.made.of = of
		f.made.got, f.made.err = add.Devices(m.Sheet, f.ask)
	}
	return f.made.got, f.made.err
}

// takeDevices puts the devices into the harness.
func takeDevices(m *desk.Model) {
	f := desk.State[deviceForm](m)
	got, err := f.preview(m)
	if err != nil {
		m.Refuse(err.Error())
		return
	}
	toMap(m)
	m.Change(got.H, summary(got))
}
