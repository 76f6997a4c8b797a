package point

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// What one point says of a wire beside its cavity: its colour first, "Red - ignition feed", and where it goes, "green, to
// indicator left".

// Parts are the pieces of a point.
type Parts struct{ Signal, Colour, Size, To, Note string }

// PartsOf parts the text behind the cavity of a point.
func PartsOf(text string) (p Parts) {
	if front, far := CutArrow(text); far != "" {
		p = PartsOf(front)
		p.To = far
		return p
	}
	if called, far, ok := shape.CutFar(text); ok && !comesFrom(text, far) {
		if p = PartsOf(called); p.To == "" {
			if p.Colour == "" && IsColour(p.Signal) { // "green, to lamp"
				p.Signal, p.Colour = "", p.Signal
			}
			p.To = far
			return p
		}
		p = Parts{}
	}
	if colour, size := WireValues(text); size != "" { // "red 20 AWG", and its name nowhere
		return Parts{Colour: colour, Size: size}
	}
	if front, back, ok := strings.Cut(text, ": "); ok && strings.Contains(front, ", ") {
		if colour, size := valuesOf(front); colour != "" { // "Red, 14 AWG: battery plus"
			return Parts{Signal: strings.TrimSpace(back), Colour: colour, Size: size}
		}
	}
	for _, mark := range []string{" - ", " – ", " = ", ": ", ", "} {
		front, back, ok := strings.Cut(text, mark)
		ok = ok && strings.Count(front, "(") == strings.Count(front, ")")
		if ok && IsColour(strings.TrimSpace(front)) {
			p.Colour, text = strings.TrimSpace(front), strings.TrimSpace(back)
			break
		}
		if colour, size := WireValues(strings.TrimSpace(front)); ok && colour != "" {
			return Parts{Colour: colour, Size: size, Signal: strings.TrimSpace(back)} // "red 16 AWG - horn feed"
		}
		if at := strings.LastIndex(text, mark); ok && at > 0 {
			if colour, size := WireValues(strings.TrimSpace(text[at+len(mark):])); colour != "" && size != "" {
				return Parts{Colour: colour, Size: size, Signal: strings.TrimSpace(text[:at])} // "horn feed - red 16 AWG"
			}
		}
	}
	if free, ok := freeWire(text); ok {
		return free
	}
	if told, ok := valuesBeforeRemark(text); ok && p.Colour == "" {
		return told
	}
	if IsColour(text) && p.Colour == "" && strings.ContainsAny(text, "/ ") {
		return Parts{Colour: text}
	}
	if lead, ok := valuesBefore(text); ok && p.Colour == "" {
		return lead
	}
	if p.Colour == "" {
		if within, ok := valuesAmong(text); ok {
			return within
		}
	}
	front, values := ValuesBehind(text)
	for _, v := range values {
		if IsColourOrLetters(v) && p.Colour == "" {
			p.Colour = v
		} else if !IsColourOrLetters(v) {
			p.Size = v
		} else {
			front = text // a second colour is of something else
		}
	}
	p.Signal = front
	if a, b, ok := strings.Cut(front, " to "); ok && p.To == "" && name.IsEnd(b) {
		p.Signal, p.To = a, b // "TX to radio pin 3"
		return p
	}
	for _, lead := range []string{"to ", "goes to ", "nach ", "vers "} {
		if len(front) > len(lead) && strings.EqualFold(front[:len(lead)], lead) {
			p.Signal, p.To = "", strings.TrimSpace(front[len(lead):])
		}
	}
	return p
}

// comesFrom reports whether the word before a far end says that the wire comes from there, which is as likely a part of its name,
// "ignition feed, from fuse 4".
func comesFrom(text, far string) bool {
	front, _, _ := strings.Cut(text, far)
	all := strings.Fields(front)
	if len(all) == 0 || len(all) > 1 && strings.HasSuffix(all[len(all)-2], ")") { // "12 V (red, 20 AWG) from Box 4"
		return false
	}
	switch table.Fold(strings.Trim(all[len(all)-1], ",;(")) {
	case "from", "von", "depuis", "desde", "dal", "dalla", "fran", "van", "od", "fra":
		return true
	}
	return false
}

// valuesBefore parts a point that says what the wire is and then where it comes from or goes, and nothing else: "16 AWG red from
// Box pin 2".
func valuesBefore(text string) (p Parts, ok bool) {
	all := strings.Fields(text)
	at := slices.IndexFunc(all, func(w string) bool {
		switch table.Fold(w) {
		case "from", "to", "von", "nach", "zu", "de", "vers", "desde", "hacia", "da", "verso", "van", "naar", "fran", "till", "fra", "til":
			return true
		}
		return false
	})
	if at < 1 || at+1 >= len(all) {
		return p, false
	}
	front := strings.Join(all[:at], " ")
	p.To = strings.Join(all[at+1:], " ")
	if IsColour(front) {
		p.Colour = front
		return p, true
	}
	if g, ok := value.ParseGauge(front, value.BareAWG, value.MarkUnknown); ok && g.Size != "" && strings.Trim(front, "0123456789.,") != "" {
		p.Size = front
		return p, true
	}
	for i := 1; i < at; i++ {
		for _, try := range [][2]string{{strings.Join(all[:i], " "), strings.Join(all[i:at], " ")},
			{strings.Join(all[i:at], " "), strings.Join(all[:i], " ")}} {
			g, ok := value.ParseGauge(try[0], value.BareAWG, value.MarkUnknown)
			if ok && g.Size != "" && !g.IsCable() && IsColour(try[1]) {
				p.Size, p.Colour = try[0], try[1]
				return p, true
			}
		}
	}
	return Parts{}, false
}

// valuesOf reads a colour and a size with a comma between; colour is "" where anything else stands there.
func valuesOf(text string) (colour, size string) {
	for p := range strings.SplitSeq(text, ", ") {
		g, ok := value.ParseGauge(p, value.BareAWG, value.MarkUnknown)
		switch {
		case IsColour(p) && colour == "":
			colour = p
		case ok && g.Size != "" && size == "":
			size = p
		default:
			return "", ""
		}
	}
	return colour, size
}

// PartPoints gives the pieces of some points cells of their own, where half of them begin with a colour or say where they go:
// cavity, name, colour, size, far end. texts are what stands behind the cavities. ok is false where they say neither.
func (m *Memo) PartPoints(rows []table.Row, pins, texts []string) (ok bool) {
	n, filled := 0, 0
	for _, t := range texts {
		if t == "" {
			continue
		}
		filled++
		if p := m.Of(t); p.To != "" || p.Colour != "" && !strings.HasSuffix(t, ")") &&
			(p.Size != "" || !strings.HasSuffix(t, p.Colour)) || p.Colour != "" && saysEquals(t) {
			n++
		}
	}
	if n == 0 || 2*n < filled {
		return false
	}
	far := farBehind(texts)
	for i := range rows {
		p := m.Of(texts[i])
		if called, to, ok := strings.Cut(p.Signal, " - "); far && ok && p.To == "" {
			p.Signal, p.To = called, to
		}
		rows[i].Cells, rows[i].Prose = []string{pins[i], p.Signal, p.Colour, p.Size, p.To, p.Note}, false
	}
	return true
}

// farBehind reports whether every point that is in use has three pieces with dashes between, its colour first, and the last of some
// is a connector or its cavity: that is where its wire goes, "red - main feed - G1".
func farBehind(texts []string) bool {
	ends := 0
	for _, t := range texts {
		if t == "" || name.StateOf(t) != name.Used {
			continue
		}
		all := strings.Split(t, " - ")
		if len(all) != 3 || !IsColour(all[0]) {
			return false
		}
		if name.IsEnd(all[2]) || name.IsDesignator(all[2]) {
			ends++
		}
	}
	return ends > 0
}
