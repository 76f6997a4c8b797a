package connector

import (
	"fmt"

	"contralay/model"
	"contralay/model/catalogue/shell"
	"contralay/ui/paper/list"
)

// shellText is what a builder and a fitter want of the shell of a connector: the thread that its accessory goes on, and, where
// its mount says so, the hole that a flange wants or the torque of the nut. A file does not say which series a connector is
// of, so both threads are there. "" where the catalogue has no such shell. Sources: those of package shell.
func shellText(m list.Maker, t int) string {
	e := &m.H.Terminations[t]
	i, known := m.S.Cat.Insert(e.Insert.V)
	if !known {
		return ""
	}
	s, known := shell.Of(i.Shell)
	if !known {
		return ""
	}
	says := fmt.Sprintf(" Accessory thread: %s (series I, II), %s (III, IV).", s.Rear, s.RearMetric)
	switch e.Mount.V {
	case model.MountFlange:
		says += fmt.Sprintf(" A flange that is mounted from behind the panel wants a hole of %s %s; other holes stand in "+
			"MIL-DTL-38999N figure 11.", m.Sys.Fine(s.Hole.A), m.Sys.Name())
	case model.MountJamNut:
		least, most := s.Nut.Torque()
		says += fmt.Sprintf(" Jam nut %s: tighten with %.1f to %.1f N·m (%.0f to %.0f lbf·in; series III). Its hole stands in "+
			"MIL-DTL-38999N figure 11.", s.Nut.Thread, least, most, s.Nut.Least, s.Nut.Most)
	}
	return says
}
