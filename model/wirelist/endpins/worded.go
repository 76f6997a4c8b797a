package endpins

import (
	"regexp"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/endtext"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
)

// behindPin is an end with the word for a cavity right before it, however the two are written together; beforePin one that begins with
// both.
var (
	behindPin = regexp.MustCompile(`(?i)^(.*[^ _\-./#])[ _\-./#]*\bpins?[ \-_.#]*([0-9]{1,3}|[A-Z][0-9]{0,3})$`)
	beforePin = regexp.MustCompile(`(?i)^pin[ \-_.#]*([0-9]{1,3}|[A-Z][0-9]{0,3}) +(?:of |on |at |at the |of the |on the )?([^ ].*)$`)
	// marked is an end whose device and cavity are parted by some other sign or word.
	marked = regexp.MustCompile(`(?i)^([^_=>\\|]*[^ _=>\\|])(_|=|>|\\|\|| p\.? ?| pos\.? | position | contact | way | no\. ?| nr\. ?)([0-9]{1,3}|[A-Z][0-9]{0,3})$`)
)

// partWorded parts the ends that have a word for a cavity before it, "ECU-pin7", "pin 7 ECU", and those of a side that a sign or another
// word parts all alike, where it is plain that numbers stand behind it which count no devices: "ECU_14", "ECU p14".
func partWorded(im *draft.Importer) {
	withoutWords(im)
	sides := map[columnKey]*markedSide{}
	var order []columnKey
	for _, it := range im.Items {
		for _, e := range []*draft.End{&it.From, &it.To} {
			if e.Term != nil || e.Text == "" || e.Pin != "" || titled(im, e.Text) {
				continue
			}
			if of, pin := cutPinWord(e.Text); pin != "" {
				e.Text, e.Pin = of, pin
				continue
			}
			if endtext.IsStud(e.Text) || name.IsSpliceName(e.Text) || name.StateOf(e.Text) != name.Used {
				continue
			}
			key := columnKey{it.Place.File, it.Place.Sheet, e == &it.To}
			s := sides[key]
			if s == nil {
				s = &markedSide{places: map[string]map[string]bool{}}
				sides[key], order = s, append(order, key)
			}
			s.add(it, e)
		}
	}
	for _, key := range order {
		other := sides[otherSide(key)]
		if s := sides[key]; s.alike() && (s.counted() || other != nil && other.mark == s.mark && other.alike() && other.counted()) {
			s.part(im)
		}
	}
}

// cutPinWord parts an end that has a word for a cavity right before it; pin is "" where it has none.
func cutPinWord(text string) (of, pin string) {
	if at := strings.IndexAny(text, "pP"); at < 0 || !strings.Contains(strings.ToLower(text), "pin") {
		return "", "" // most ends
	}
	if m := behindPin.FindStringSubmatch(text); m != nil {
		return strings.TrimSpace(m[1]), m[2]
	}
	if m := beforePin.FindStringSubmatch(text); m != nil {
		return m[2], m[1]
	}
	return "", ""
}

// cutMarked parts an end at a sign or a word; nil where it has none.
func cutMarked(text string) []string {
	if strings.ContainsAny(text, "_=>\\|") || strings.Contains(text, " ") {
		return marked.FindStringSubmatch(text)
	}
	return nil // most ends
}

// Unworded is an end without the word or the sign that parts its device from its cavity, any other text as it is.
func Unworded(text string) string {
	if of, pin := cutPinWord(text); pin != "" {
		return of + " " + pin
	}
	if m := cutMarked(text); m != nil {
		return m[1] + " " + m[3]
	}
	return text
}

// markedSide is the ends of one side of a sheet that name no cavity yet.
type markedSide struct {
	mark   string // that parts the first of them
	items  []*draft.Item
	ends   []*draft.End
	all    int
	places map[string]map[string]bool // of each device
}

func (s *markedSide) add(it *draft.Item, e *draft.End) {
	s.all++
	m := cutMarked(e.Text)
	if m == nil {
		return
	}
	mark := strings.ToLower(strings.Trim(m[2], " ."))
	if s.mark == "" {
		s.mark = mark
	}
	if mark != s.mark {
		return
	}
	s.items, s.ends = append(s.items, it), append(s.ends, e)
	k := name.Key(m[1])
	if s.places[k] == nil {
		s.places[k] = map[string]bool{}
	}
	s.places[k][m[3]] = true
}

// alike reports whether three ends or more, and three of four, have the one mark.
func (s *markedSide) alike() bool { return len(s.ends) > 2 && 4*len(s.ends) >= 3*s.all }

// counted reports whether some device has places that are no numbers of devices.
func (s *markedSide) counted() bool {
	for of, places := range s.places {
		if len(places) > 1 && len(name.Words(of)) > 0 && weightOf(of, places) > 0 {
			return true
		}
	}
	return false
}

func (s *markedSide) part(im *draft.Importer) {
	first := s.ends[0].Text
	for _, e := range s.ends {
		m := cutMarked(e.Text)
		e.Text, e.Pin = m[1], m[3]
	}
	im.Say(report.Note, "a cavity behind its device", s.items[0].Place, first,
		"what stands behind the sign or the word is taken for the cavity")
}

// withoutWords takes the word for a cavity off the end of the names of devices whose cavities are parted already, "ECU Pin-7", and a letter
// or a word that could be of the name, "ECU P.7", where three ends or more of the list have it, and no other end has a cavity without.
func withoutWords(im *draft.Importer) {
	of := map[string][]*draft.End{}
	bare := false
	for _, it := range im.Items {
		for _, e := range []*draft.End{&it.From, &it.To} {
			if e.Term != nil || e.Pin == "" {
				continue
			}
			front, last := cutLast(e.Text)
			switch w := strings.ToLower(strings.Trim(last, ".#")); {
			case front == "":
				bare = true
			case w == "pin" || w == "cav" || w == "cavity":
				e.Text = front
			case w == "p" || w == "no" || w == "nr" || w == "pos":
				of[w] = append(of[w], e)
			default:
				bare = true
			}
		}
	}
	for w, ends := range of {
		places := map[string]map[string]bool{}
		for _, e := range ends {
			front, _ := cutLast(e.Text)
			if places[front] == nil {
				places[front] = map[string]bool{}
			}
			places[front][e.Pin] = true
		}
		sure := false
		for device, pins := range places {
			sure = sure || weightOf(name.Key(device), pins) > 0
		}
		for _, e := range ends {
			switch {
			case sure && !bare && len(ends) > 2:
				e.Text, _ = cutLast(e.Text)
			case w == "no" || w == "nr": // "Lamp no.3" is one of several
				e.Text, e.Pin = e.Text+" "+e.Pin, ""
			}
		}
	}
}

// cutLast parts the last word off a text; front is "" where it has one word.
func cutLast(text string) (front, last string) {
	at := strings.LastIndexByte(text, ' ')
	if at < 1 {
		return "", text
	}
	return strings.TrimSpace(text[:at]), text[at+1:]
}
