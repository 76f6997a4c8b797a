package ends

import (
	"fmt"

	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// The screens that make things.
const (
	AddKind       desk.Kind = "add"
	ConnectorKind desk.Kind = "new connector"
	GroupsKind    desk.Kind = "kinds of device"
	GroupKind     desk.Kind = "kind of device"
	DeviceKind    desk.Kind = "new devices"
	SparesKind    desk.Kind = "new spares"
)

// AddAt opens what can be added at a termination or a breakout. A termination without a branch
// wants its trunk first, so its length is asked at once.
func AddAt(m *desk.Model, place string) {
	if _, is := m.Sheet.Index.Termination[place]; is && len(m.Sheet.Index.Meeting(place)) == 0 {
		m.OpenField(*trunkField(m, place), "")
		m.Tell("the length of the trunk from " + place + " to its first breakout")
		return
	}
	m.Show(AddKind, place)
}

// FirstRows are the ways to begin, for a map that holds nothing.
func FirstRows(m *desk.Model) []desk.Row {
	return []desk.Row{
		{Key: "add connector", Text: "a connector", Detail: "Enter chooses it by its number of cavities, or by its arrangement",
			Enter: func(m *desk.Model) { chooseConnector(m, "") }},
		{Key: "add device", Text: "a device: a sensor, an injector, a pump, a lamp",
			Detail: "Enter lists the kinds. Its wires come when there is a connector to take them",
			Enter:  func(m *desk.Model) { chooseDevice(m, "") }},
	}
}

// AddPage is what can be added at a place.
func AddPage(m *desk.Model, _ int, place string) desk.Page {
	if !standsIn(m, place) {
		return desk.Page{Empty: place + " is gone. Esc goes back"}
	}
	p := desk.Page{Lines: []string{"Add at " + place + ". A number and Enter take a row."}}
	var rows []desk.Row
	if _, is := m.Sheet.Index.Breakout[place]; is {
		rows = append(rows,
			desk.Row{Key: "device", Text: "devices: sensors, injectors, pumps, lamps",
				Detail: "Enter lists the kinds, with their wires and legs",
				Enter:  func(m *desk.Model) { chooseDevice(m, place) }},
			desk.Row{Key: "connector", Text: "a connector, on a leg of its own", Detail: "Enter chooses it",
				Enter: func(m *desk.Model) { chooseConnector(m, place) }},
			desk.Row{Key: "run", Text: "a branch to a breakout further on", Detail: "Enter asks for its length",
				Enter: func(m *desk.Model) { m.OpenField(*trunkField(m, place), "") }},
			desk.Row{Key: "leg", Text: "a bare leg: what it ends in is said later", Detail: "Enter asks for its length",
				Enter: func(m *desk.Model) { m.OpenField(*legField(m, place), "") }})
	}
	rows = append(rows,
		desk.Row{Key: "spares", Text: "spare wires", Detail: "Enter asks how many, from where to where",
			Enter: func(m *desk.Model) { askSpares(m, place) }},
		coverRow(m))
	p.Rows = desk.Numbered(rows)
	return p
}

// KeepForm answers Backspace on a page whose choices are in no harness yet: it takes back nothing, and loses
// none of them.
func KeepForm(m *desk.Model) {
	m.Tell("nothing of this page is added yet, so there is nothing to undo. Esc leaves it")
}

// standsIn reports whether a place is in the harness.
func standsIn(m *desk.Model, place string) bool {
	_, t := m.Sheet.Index.Termination[place]
	_, b := m.Sheet.Index.Breakout[place]
	return t || b
}

// length reads the length of a branch; an empty text is one that is not measured yet.
func length(m *desk.Model, text string) (unit.Millimetre, error) {
	if text == "" {
		return 0, nil
	}
	v, err := m.Sys.Parse(text)
	if err != nil {
		return 0, err
	}
	if v < 1 || v > desk.LongestBranch {
		return 0, fmt.Errorf("%s %s is out of range: %s to %s %s, or nothing where it is not measured yet", text, m.Sys.Name(),
			m.Sys.Length(1), m.Sys.Length(desk.LongestBranch), m.Sys.Name())
	}
	return v, nil
}

// lengthText is a length as it is said; one that is not measured yet says so.
func lengthText(m *desk.Model, v unit.Millimetre) string {
	if v <= 0 {
		return "not measured yet"
	}
	return m.Sys.Length(v) + " " + m.Sys.Name()
}

// trunkField asks for the length of a branch to a new breakout.
func trunkField(m *desk.Model, from string) *desk.Field {
	return branchField(m, "length from "+from+" to the new breakout",
		func(m *desk.Model, v unit.Millimetre) (*model.Harness, string, string, error) {
			h, branch, err := edit.AddBranch(m.H, from, "", v)
			return h, branch, fmt.Sprintf("%s runs from %s to the new breakout %s: %s. + on it adds devices there", branch, from,
				h.Branches[len(h.Branches)-1].To, lengthText(m, v)), err
		})
}

// legField asks for the length of a leg to a termination that is not known yet.
func legField(m *desk.Model, at string) *desk.Field {
	return branchField(m, "length of the leg from "+at, func(m *desk.Model, v unit.Millimetre) (*model.Harness, string, string, error) {
		h, branch, term := m.H.AddLeg(at, v, 2)
		return h, branch, fmt.Sprintf("branch %s to %s added: %s, with two cavities for now. Open %s to say what it is", branch, term,
			lengthText(m, v), term), nil
	})
}

// branchField asks for the length of a branch that make makes, and puts the cursor of the map
// on it.
func branchField(m *desk.Model, label string,
	make func(m *desk.Model, v unit.Millimetre) (h *model.Harness, branch, says string, err error)) *desk.Field {
	return &desk.Field{Label: label, Unit: m.Sys.Name(), Number: true, Set: func(m *desk.Model, text string) error {
		v, err := length(m, text)
		if err != nil {
			return err
		}
		h, branch, says, err := make(m, v)
		if err != nil {
			return err
		}
		toMap(m)
		m.Change(h, says)
		m.PutOn("branch " + branch)
		return nil
	}}
}

// toMap closes what is open over the map.
func toMap(m *desk.Model) {
	for len(m.Stack) > 0 && m.Top() != desk.KindMap {
		m.Back()
	}
}

// counted reads how many are wanted.
func counted(text, what string, most int) (int, error) {
	n := 0
	if _, err := fmt.Sscanf(text, "%d", &n); err != nil || fmt.Sprint(n) != text || n < 1 || n > most {
		return 0, fmt.Errorf("%s is not a number of %s: 1 to %s", text, what, words.Trim(float64(most)))
	}
	return n, nil
}
