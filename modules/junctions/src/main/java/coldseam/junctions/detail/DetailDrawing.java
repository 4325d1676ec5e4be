package coldseam.junctions.detail;

/** How a detail's section is put together from two bands of layers; its own room decides. */
public interface DetailDrawing {}
