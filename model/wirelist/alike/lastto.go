package alike

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/words"
)

// lastTo parts the far end off the end of each text, where it is the last piece of four of five that are in use, and a word for where the
// wire goes stands before it, another one in each or a word that means something else elsewhere; ok is false where fewer have one.
//
//	via 1: luce sinistra, rosso, 2,5 mm², a relè K3 morsetto 87
//	via 2: massa, nero, 4 mm², al telaio
func lastTo(texts []string) (near, far []string, ok bool) {
	for _, mark := range []string{", ", "; ", " – ", " - "} {
		near, far = make([]string, len(texts)), make([]string, len(texts))
		used, cut := 0, 0
		for i, t := range texts {
			near[i] = t
			if t == "" || name.StateOf(t) != name.Used {
				continue
			}
			used++
			at := strings.LastIndex(t, mark)
			if at <= 0 {
				continue
			}
			if place, is := words.BehindGoesTo(t[at+len(mark):]); is && isShort(place) {
				near[i], far[i] = strings.TrimSpace(t[:at]), place
				cut++
			}
		}
		if cut > 1 && 5*cut >= 4*used {
			return near, far, true
		}
	}
	return nil, nil, false
}
