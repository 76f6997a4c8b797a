package alike

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/name"
)

// endForms are the ways in which an end names its device and its cavity, the plainest first.
var endForms = []*regexp.Regexp{
	regexp.MustCompile(`^(?i:pin|terminal|cavity|way|contact) (?P<pin>\S{1,4}) (?i:of|on|at|in) (?:the )?(?P<of>.+)$`),
	regexp.MustCompile(`^(?P<of>.+?),? (?i:pin|terminal|cavity|way|contact) (?P<pin>\S{1,4})$`),
	regexp.MustCompile(`^(?P<of>.+?) ?: ?(?P<pin>\S{1,4})$`),
	regexp.MustCompile(`^(?P<of>.+?) [-–—] (?P<pin>\S{1,4})$`),
	regexp.MustCompile(`^(?P<of>.+) ?\((?P<pin>[^ )]{1,4})\)$`),
	regexp.MustCompile(`^(?P<of>.+) #(?P<pin>\S{1,4})$`),
	regexp.MustCompile(`^(?P<of>.+)[/.](?P<pin>[^ /.]{1,4})$`),
	regexp.MustCompile(`^(?P<of>[^,]+), (?P<pin>\S{1,4})$`),
}

// sameEnds writes ends that name a device and its cavity in one way as "DEVICE:CAVITY"; where four of five do not, all stay.
func sameEnds(ends []*string) {
	filled := 0
	for _, e := range ends {
		if *e != "" {
			filled++
		}
	}
	for _, form := range endForms {
		made, n := make([]string, len(ends)), 0
		for i, e := range ends {
			m := form.FindStringSubmatch(*e)
			if m == nil {
				continue
			}
			of, pin := strings.TrimSpace(m[form.SubexpIndex("of")]), m[form.SubexpIndex("pin")]
			if isPin(pin) && !strings.Contains(of, ":") {
				made[i] = of + ":" + pin
				n++
			}
		}
		if !slices.ContainsFunc(made, func(s string) bool { return strings.Contains(s, " ") }) && strings.ContainsAny(form.String(), "/") {
			continue // ends of one word are parted by themselves
		}
		if n < 2 || 5*n < 4*filled {
			continue
		}
		for i, e := range ends {
			if made[i] != "" {
				*e = made[i]
			}
		}
		return
	}
}

// isPin reports whether a word can be the cavity of a device.
func isPin(word string) bool { return name.IsCavity(word) || word == "+" || word == "-" }
