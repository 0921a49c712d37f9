package holloway.importing;

import holloway.housefile.draft.Draft;
import holloway.step.StepEntity;
import holloway.step.StepFile;
import holloway.step.StepReader;
import holloway.step.StepValue;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The doorway: from an IFC model (IFC2X3 or IFC4 and what followed it) to a draft of a house. */
public final class IfcImport {
  private static final Set<String> WANTED =
      new TreeSet<>(
          Set.of(
              ("IFCPROJECT IFCBUILDING IFCBUILDINGSTOREY IFCSPACE IFCROOF IFCSTAIR IFCCURTAINWALL"
                      + " IFCGEOMETRICREPRESENTATIONCONTEXT"
                      + " IFCUNITASSIGNMENT IFCSIUNIT IFCCONVERSIONBASEDUNIT"
                      + " IFCCONVERSIONBASEDUNITWITHOFFSET IFCMEASUREWITHUNIT"
                      + " IFCRELAGGREGATES IFCRELCONTAINEDINSPATIALSTRUCTURE IFCRELVOIDSELEMENT"
                      + " IFCRELFILLSELEMENT IFCRELASSOCIATESMATERIAL IFCRELDEFINESBYTYPE"
                      + " IFCLOCALPLACEMENT IFCGRIDPLACEMENT IFCLINEARPLACEMENT"
                      + " IFCAXIS2PLACEMENT2D IFCAXIS2PLACEMENT3D IFCCARTESIANPOINT IFCDIRECTION"
                      + " IFCCARTESIANTRANSFORMATIONOPERATOR3D"
                      + " IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM IFCPRODUCTDEFINITIONSHAPE"
                      + " IFCSHAPEREPRESENTATION IFCEXTRUDEDAREASOLID IFCRECTANGLEPROFILEDEF"
                      + " IFCROUNDEDRECTANGLEPROFILEDEF IFCCIRCLEPROFILEDEF IFCISHAPEPROFILEDEF"
                      + " IFCARBITRARYCLOSEDPROFILEDEF IFCARBITRARYPROFILEDEFWITHVOIDS"
                      + " IFCCOMPOSITEPROFILEDEF IFCDERIVEDPROFILEDEF IFCREVOLVEDAREASOLID"
                      + " IFCSWEPTDISKSOLID IFCADVANCEDBREP IFCCSGSOLID"
                      + " IFCPOLYLINE IFCINDEXEDPOLYCURVE IFCCARTESIANPOINTLIST2D"
                      + " IFCCARTESIANPOINTLIST3D IFCCOMPOSITECURVE IFCCOMPOSITECURVESEGMENT"
                      + " IFCTRIMMEDCURVE IFCCIRCLE IFCELLIPSE IFCBSPLINECURVEWITHKNOTS"
                      + " IFCFACETEDBREP IFCFACETEDBREPWITHVOIDS IFCCLOSEDSHELL IFCOPENSHELL"
                      + " IFCCONNECTEDFACESET IFCSHELLBASEDSURFACEMODEL IFCFACEBASEDSURFACEMODEL"
                      + " IFCFACE IFCFACEOUTERBOUND IFCFACEBOUND IFCPOLYLOOP IFCEDGELOOP"
                      + " IFCPOLYGONALFACESET IFCINDEXEDPOLYGONALFACE"
                      + " IFCINDEXEDPOLYGONALFACEWITHVOIDS IFCTRIANGULATEDFACESET"
                      + " IFCBOOLEANCLIPPINGRESULT IFCBOOLEANRESULT IFCMAPPEDITEM"
                      + " IFCREPRESENTATIONMAP IFCMATERIALLAYERSETUSAGE IFCMATERIALLAYERSET"
                      + " IFCMATERIALLAYER IFCMATERIAL IFCWALLTYPE IFCSLABTYPE")
                  .split(" ")));

  static {
    Stream.of(
            WallReader.TYPES,
            HoleReader.DOORS,
            HoleReader.WINDOWS,
            HoleReader.OPENINGS,
            FloorSlabs.TYPES)
        .forEach(WANTED::addAll);
  }

  private IfcImport() {}

  /**
   * @param fileName for the comments of the draft
   * @throws holloway.step.StepFault when the text is no STEP file, with line and column
   * @throws ModelFault when it holds no house that we can read
   */
  public static Draft read(InputStream in, String fileName) throws IOException {
    StepFile file = StepReader.read(in, WANTED::contains);
    String schema = schema(file);
    if (file.size() == 0) {
      throw new ModelFault("the model is empty");
    }
    return new DraftMaker(new Model(file), schema, fileName).make();
  }

  private static String schema(StepFile file) {
    Optional<StepEntity> said = file.findHeader("FILE_SCHEMA");
    for (StepValue v : said.map(s -> Model.items(s.value(0))).orElse(List.of())) {
      if (v instanceof StepValue.Text t
          && t.text().toUpperCase(Locale.ROOT).matches("IFC(2X3|4).*")) {
        return Titles.plain(t.text(), "IFC");
      }
    }
    throw new ModelFault(
        "this STEP file is not of IFC2X3, IFC4 or a later one that builds on it (FILE_SCHEMA)");
  }
}
