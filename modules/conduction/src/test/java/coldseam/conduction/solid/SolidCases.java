package coldseam.conduction.solid;

/** Bodies with couplings from outside the project. */
final class SolidCases {

    private SolidCases() {}

    /** Steel bracket 10x50 through 200 mm insulation on concrete, quarter. */
    static Blocks bracket() {
        return Blocks.of("steel bracket 10x50 through 200 mm insulation on concrete, quarter", 0, 0, 0, 500, 500, 480)
                .times(4)
                .cut(BoxSide.X0, BoxSide.X1, BoxSide.Y0, BoxSide.Y1)
                .air("indoor", 0, 0, -10, 500, 500, 0)
                .air("outdoor", 0, 0, 380, 500, 500, 490)
                .solid(2.3, 0, 0, 0, 500, 500, 180)
                .solid(0.035, 0, 0, 180, 500, 500, 380)
                .solid(50.0, 0, 0, 180, 5, 25, 480)
                .environment("indoor", 20.0, 0.13)
                .environment("outdoor", -5.0, 0.04)
                .probe("inside behind", 0, 0, 0);
    }

    /** Three-way corner wall/wall/flat roof, boards outside. */
    static Blocks corner() {
        return Blocks.of("three-way corner wall/wall/flat roof, boards outside", 0, 0, 0, 1580, 1580, 1600)
                .cut(BoxSide.X1, BoxSide.Y1, BoxSide.Z0)
                .air("outdoor", -10, -10, 0, 1580, 1580, 1610)
                .solid(0.035, 0, 0, 0, 1580, 1580, 1600)
                .solid(0.8, 200, 200, 0, 1580, 1580, 1200)
                .solid(2.3, 200, 200, 1200, 1580, 1580, 1350)
                .air("indoor", 380, 380, 0, 1580, 1580, 1200)
                .environment("indoor", 20.0, 0.13)
                .environment("outdoor", -5.0, 0.04)
                .probe("corner", 380, 380, 1200);
    }

    /** Three-way corner, roof slab run out through the wall boards. */
    static Blocks corner2() {
        return Blocks.of("three-way corner, roof slab run out through the wall boards", 0, 0, 0, 1580, 1580, 1600)
                .cut(BoxSide.X1, BoxSide.Y1, BoxSide.Z0)
                .air("outdoor", -10, -10, 0, 1580, 1580, 1610)
                .solid(0.035, 0, 0, 0, 1580, 1580, 1600)
                .solid(0.8, 200, 200, 0, 1580, 1580, 1200)
                .solid(2.3, 0, 0, 1200, 1580, 1580, 1350)
                .air("indoor", 380, 380, 0, 1580, 1580, 1200)
                .environment("indoor", 20.0, 0.13)
                .environment("outdoor", -5.0, 0.04)
                .probe("corner", 380, 380, 1200);
    }

    /** Homogeneous cube, one hot face, three cold faces. */
    static Blocks cube() {
        return Blocks.of("homogeneous cube, one hot face, three cold faces", 0, 0, 0, 1000, 1000, 1000)
                .cut(BoxSide.Y0, BoxSide.Z0)
                .air("cold", -10, -10, -10, 1010, 1010, 1010)
                .air("hot", -10, -10, -10, 0, 1010, 1010)
                .adiabatic(0, -10, 0, 1000, 0, 1000)
                .adiabatic(0, 0, -10, 1000, 1000, 0)
                .solid(1.0, 0, 0, 0, 1000, 1000, 1000)
                .environment("hot", 1.0, 0.1)
                .environment("cold", 0.0, 0.1);
    }

    /** Wall/roof section of the corner, extruded 1 m. */
    static Blocks ext() {
        return Blocks.of("wall/roof section of the corner, extruded 1 m", 0, 0, 0, 1580, 1000, 1600)
                .cut(BoxSide.X1, BoxSide.Y0, BoxSide.Y1, BoxSide.Z0)
                .air("outdoor", -10, 0, 0, 1580, 1000, 1610)
                .solid(0.035, 0, 0, 0, 1580, 1000, 1600)
                .solid(0.8, 200, 0, 0, 1580, 1000, 1200)
                .solid(2.3, 200, 0, 1200, 1580, 1000, 1350)
                .air("indoor", 380, 0, 0, 1580, 1000, 1200)
                .environment("indoor", 20.0, 0.13)
                .environment("outdoor", -5.0, 0.04);
    }

    /** ISO 10211 case 3. */
    static Blocks iso3() {
        return Blocks.of("ISO 10211 case 3", -100, -700, 0, 1200, 1200, 2150)
                .cut(BoxSide.X1, BoxSide.Y1, BoxSide.Z0, BoxSide.Z1)
                .air("gamma", -200, -800, 0, 0, 1200, 2150)
                .air("gamma", -200, -800, 0, 1200, 0, 2150)
                .solid(1.0, -100, -100, 0, 0, 1200, 2150)
                .solid(1.0, -100, -100, 0, 1200, 0, 2150)
                .solid(0.04, 0, 0, 0, 50, 1200, 2150)
                .solid(0.04, 0, 0, 0, 1200, 50, 2150)
                .solid(0.7, 50, 50, 0, 200, 1200, 2150)
                .solid(0.7, 50, 50, 0, 1200, 200, 2150)
                .air("alpha", 200, 200, 0, 1200, 1200, 1000)
                .air("beta", 200, 200, 1150, 1200, 1200, 2150)
                .solid(2.5, 50, -700, 1000, 1200, 1200, 1150)
                .solid(1.0, 200, 200, 1150, 1200, 1200, 1200)
                .environment("alpha", 20.0, 0.2)
                .environment("beta", 15.0, 0.2)
                .environment("gamma", 0.0, 0.05)
                .probe("alpha corner", 200, 200, 1000)
                .probe("beta corner", 200, 200, 1200)
                .probe("far alpha", 1200, 1200, 1000)
                .probe("far beta", 1200, 1200, 1200);
    }

    /** ISO 10211 case 4, quarter. */
    static Blocks iso4() {
        return Blocks.of("ISO 10211 case 4, quarter", 0, 0, 0, 500, 500, 600)
                .times(4)
                .cut(BoxSide.X0, BoxSide.X1, BoxSide.Y0, BoxSide.Y1)
                .air("outside", 0, 0, -10, 500, 500, 0)
                .air("inside", 0, 0, 200, 500, 500, 700)
                .solid(0.1, 0, 0, 0, 500, 500, 200)
                .solid(50.0, 0, 0, 0, 50, 25, 600)
                .environment("inside", 1.0, 0.1)
                .environment("outside", 0.0, 0.1)
                .probe("bar end centre", 0, 0, 0);
    }

    /** Joist end in brick wall with inside insulation. */
    static Blocks joist() {
        return Blocks.of("joist end in brick wall with inside insulation", 0, -380, 0, 300, 1200, 1420)
                .cut(BoxSide.X0, BoxSide.X1, BoxSide.Y1, BoxSide.Z0, BoxSide.Z1)
                .air("outdoor", 0, -390, 0, 300, -380, 1420)
                .solid(0.8, 0, -380, 0, 300, 0, 1420)
                .air("indoor", 0, 0, 0, 300, 1200, 1420)
                .solid(0.035, 0, 0, 0, 300, 80, 600)
                .solid(0.035, 0, 0, 860, 300, 80, 1420)
                .solid(0.04, 0, 0, 600, 300, 1200, 640)
                .solid(0.13, 0, 0, 620, 300, 1200, 640)
                .solid(0.25, 0, 0, 600, 300, 1200, 620)
                .solid(0.04, 0, 0, 640, 300, 1200, 740)
                .solid(0.3, 0, 0, 740, 300, 1200, 860)
                .solid(0.13, 0, 0, 860, 300, 1200, 880)
                .solid(0.13, 0, -120, 640, 30, 1200, 860)
                .environment("indoor", 20.0, 0.13)
                .environment("outdoor", -5.0, 0.04)
                .probe("joist end", 0, -120, 640)
                .probe("wall at joist", 0, 0, 860);
    }
}
