package value

func IsCable(g Gauge) bool { return g.Conductors > 1 || g.Shielded || g.Twisted }
