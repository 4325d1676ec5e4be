package coldseam.envelope.file.house;

import coldseam.envelope.Role;

/** The part that a file says a layer plays: its role, or a word for what is of one though nobody would call it so. */
enum FilePart {
    FINISH(Role.FINISH),
    STRUCTURE(Role.STRUCTURE),
    INSULATION(Role.INSULATION),
    AIR_LAYER(Role.AIR_LAYER),
    MEMBRANE(Role.MEMBRANE),
    CLADDING(Role.CLADDING),
    /** Render, plaster or siding that stays on what carries under new boards. */
    OLD_COAT(Role.STRUCTURE);

    private final Role role;

    FilePart(Role role) {
        this.role = role;
    }

    Role role() {
        return role;
    }
}
