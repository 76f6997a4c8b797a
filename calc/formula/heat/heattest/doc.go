// Package heattest reckons the temperatures of a bundle by a method of its own, for the
// tests of calc/formula/heat to be checked against: finite volumes over the real circles
// of a cross-section. It shares no line with what it checks. It is for tests only, and a
// test of the tower holds that.
//
// What is solved is steady conduction in the plane: div(k grad T) = 0 in insulation, in
// the still air between the wires and in the sheath; every conductor at one temperature,
// with I²R of its own in it, R at that temperature; at the surface one coefficient all
// round, of natural convection and radiation at the mean temperature of the surface.
// There is no heat along the wires, no radiation and no current of air inside the sheath.
//
// The section is cut into square cells. Between the centres of two neighbours heat takes
// straight lines, and a line is the series of what it crosses: lengths through
// insulation, air and sheath found exactly from the circles, so that a gap thinner than
// a cell is not lost. The outermost cells are cut by the circle of the sheath: what is
// open of their faces conducts, and the surface in each is its length of arc.
package heattest
