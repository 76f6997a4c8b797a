package heat

// work is what a balance is worked out on, made once for all its rounds or levels.
type work struct {
	m    *matrix
	z    []float64        // a value for each node, in the order across
	y    [][sides]float64 // and as many as are solved at once
	mean []float64        // of each disc
}

func (r *Rays) work() *work {
	return &work{newMatrix(r.front), make([]float64, r.nodes), make([][sides]float64, r.nodes), make([]float64, r.discs)}
}
