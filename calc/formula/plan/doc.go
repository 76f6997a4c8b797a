// Package plan chooses which sizes go into which layer of a laid bundle: a
// centre and layers that hold every component, each closing within the shop's
// limits.
//
// It works on a multiset of diameters and knows nothing of wires or branches. It
// returns every plan found that no other beats in fillers, diameter, lumpy layers
// and spares, ranked by cost, and the cheapest of all whatever beats it there. It
// never returns a plan that breaks a rule without saying which (Relaxed).
//
// A Search works in slices of counted effort, and is better, never worse, the longer
// it is let run: a beam (beam.go) answers at once, the exact method (tree.go) goes on
// until its bounds (bound.go) leave nothing cheaper. Plan.Proven says that it came so
// far, Plan.Least what no lay-up goes below until then.
package plan
