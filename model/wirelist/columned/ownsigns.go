package columned

import (
	"regexp"
	"strconv"
	"strings"
)

// signedLine begins with a cavity, and a sign or a blank behind it.
var signedLine = regexp.MustCompile(`^\s*([A-Z]{0,2})(\d{1,3})( ?[:=).]| [-–—]|) +\S`)

// OwnSigns reports whether some lines tell the cavities of a plug one by one, each with a sign of its own behind the cavity, so that their
// commas part no cells: three of them or more follow each other, count up under the same letter, and have two signs or more.
//
//	C1 = supply, red, 14ga, from fuse 3
//	C2 - earth, black, 14ga, to hull stud
//	C4  pump, brown, 14ga, to pump 1
func OwnSigns(lines []string) bool {
	run, last, letter := 0, 0, ""
	signs := map[string]bool{}
	for _, l := range lines {
		m := signedLine.FindStringSubmatch(l)
		at := 0
		if m != nil {
			at, _ = strconv.Atoi(m[2])
		}
		if m == nil || at <= last || run > 0 && m[1] != letter {
			run, last = 0, 0
			clear(signs)
			if m == nil {
				continue
			}
		}
		run, last, letter = run+1, at, m[1]
		signs[strings.TrimSpace(m[3])] = true
		if run > 2 && len(signs) > 1 {
			return true
		}
	}
	return false
}
