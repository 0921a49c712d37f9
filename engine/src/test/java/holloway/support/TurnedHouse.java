package holloway.support;

import holloway.house.Along;
import holloway.house.Battens;
import holloway.house.Beam;
import holloway.house.Chase;
import holloway.house.Conduit;
import holloway.house.Dormer;
import holloway.house.House;
import holloway.house.Level;
import holloway.house.Obstacle;
import holloway.house.Opening;
import holloway.house.Porch;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.house.Skirting;
import holloway.house.Soffit;
import holloway.house.Stair;
import holloway.house.Tape;
import holloway.house.Thing;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import java.util.List;

/** A whole house as it looks in a mirror. */
final class TurnedHouse {
  private final Mirror mirror;
  private final TurnedRooms rooms;

  TurnedHouse(Mirror mirror) {
    this.mirror = mirror;
    this.rooms = new TurnedRooms(mirror);
  }

  House of(House h) {
    return new House(
        h.name(),
        h.place(),
        h.built(),
        h.balloon(),
        of(h.outerWalls()),
        of(h.innerWalls()),
        h.levels().stream().map(this::of).toList(),
        h.rooms().stream().map(rooms::of).toList(),
        h.walls().stream().map(this::of).toList(),
        h.openings().stream().map(this::of).toList(),
        h.roofs().stream().map(this::of).toList(),
        h.chases().stream().map(this::of).toList(),
        h.obstacles().stream().map(this::of).toList(),
        h.conduits().stream().map(this::of).toList(),
        h.soffits().stream().map(this::of).toList(),
        h.skirtings().stream().map(this::of).toList(),
        h.things().stream().map(this::of).toList(),
        h.tapes().stream().map(this::of).toList(),
        List.of(),
        h.inputs(),
        h.stairs().stream().map(this::of).toList(),
        h.assumed(),
        h.beams().stream().map(this::of).toList(),
        h.porches().stream().map(this::of).toList(),
        mirror.way().of(h.layout()),
        h.ownRules(),
        h.turned());
  }

  private WallSpec of(WallSpec s) {
    return new WallSpec(
        s.ref().map(mirror::of),
        s.name(),
        s.kind(),
        s.studs(),
        s.every(),
        s.studsFrom().map(mirror::of),
        s.thickness(),
        s.bearing(),
        s.fill(),
        s.garageSeparation(),
        s.balloon(),
        s.singleTopPlate(),
        s.blocksAt(),
        of(s.traits()),
        s.where());
  }

  private WallTraits of(WallTraits t) {
    List<WallTraits.Layers> layers =
        t.layers().stream()
            .map(l -> new WallTraits.Layers(l.side().map(mirror::of), l.layers()))
            .toList();
    return new WallTraits(
        t.party(),
        t.knockouts(),
        layers,
        t.height(),
        t.header(),
        t.rows(),
        t.hollow(),
        t.split(),
        t.battens().stream().map(this::of).toList(),
        t.cavity());
  }

  private Battens of(Battens b) {
    return new Battens(
        b.side().map(mirror::of), b.depth(), b.every(), b.level(), b.first(), b.over());
  }

  private Level of(Level l) {
    return new Level(
        l.name(),
        rooms.of(l.floor()),
        l.ceilingHeight(),
        l.above(),
        l.rise(),
        l.where(),
        l.outerWalls().map(this::of),
        l.innerWalls().map(this::of),
        l.beside());
  }

  private Opening of(Opening o) {
    Along along = mirror.of(o.along());
    return new Opening(
        o.kind(), mirror.of(o.wall()), along, o.width(), o.sill(), o.head(), o.where());
  }

  private Roof of(Roof r) {
    return new Roof(
        r.name(),
        r.level(),
        r.rooms(),
        r.shape(),
        mirror.of(r.ridge()),
        r.lowSide().map(mirror::of),
        r.pitchRise(),
        r.pitchRun(),
        r.eaves(),
        r.frame(),
        r.chord(),
        r.every(),
        r.heel(),
        r.insulation(),
        r.fill(),
        r.boarded(),
        r.hatches().stream().map(this::of).toList(),
        r.joins().stream().map(this::of).toList(),
        r.knees().stream().map(this::of).toList(),
        r.run().map(mirror::of),
        r.skylights().stream().map(this::of).toList(),
        r.dormers().stream().map(this::of).toList(),
        r.rise(),
        r.where());
  }

  private Dormer of(Dormer d) {
    return new Dormer(
        mirror.of(d.side()),
        mirror.of(d.from()),
        d.width(),
        d.back(),
        d.height(),
        d.cover(),
        d.room(),
        d.where());
  }

  private Roof.Join of(Roof.Join j) {
    return new Roof.Join(
        j.to(), j.from().map(mirror::of), j.wide(), j.high(), j.shut(), j.valley(), j.where());
  }

  private Roof.Knee of(Roof.Knee k) {
    return new Roof.Knee(mirror.of(k.face()), k.height(), k.bare(), k.where());
  }

  private Stair of(Stair s) {
    return new Stair(
        s.name(),
        mirror.of(s.near()),
        mirror.of(s.size()),
        mirror.of(s.climbs()),
        s.under(),
        s.where());
  }

  private Beam of(Beam b) {
    return new Beam(
        b.name(),
        b.room(),
        mirror.of(b.run()),
        mirror.of(b.from()),
        b.width(),
        b.drop(),
        b.height(),
        b.made(),
        b.where());
  }

  private Porch of(Porch p) {
    return new Porch(
        p.name(),
        mirror.of(p.face()),
        mirror.of(p.from()),
        p.length(),
        p.out(),
        p.height(),
        p.boarded(),
        p.cover(),
        p.pitchRise(),
        p.pitchRun(),
        p.joists(),
        p.every(),
        p.run(),
        p.where());
  }

  private Roof.Hatch of(Roof.Hatch h) {
    return mirror.swaps()
        ? new Roof.Hatch(mirror.of(h.at()), h.northSouth(), h.eastWest())
        : new Roof.Hatch(mirror.of(h.at()), h.eastWest(), h.northSouth());
  }

  private Roof.Skylight of(Roof.Skylight k) {
    return mirror.swaps()
        ? new Roof.Skylight(mirror.of(k.at()), k.northSouth(), k.eastWest(), k.where())
        : new Roof.Skylight(mirror.of(k.at()), k.eastWest(), k.northSouth(), k.where());
  }

  private Chase of(Chase c) {
    return new Chase(
        c.name(),
        mirror.of(c.beside()),
        c.along().map(mirror::of),
        c.inside(),
        c.from(),
        c.to(),
        c.alongFace(),
        c.awayFromFace(),
        c.contents(),
        c.floors(),
        c.known(),
        c.where());
  }

  private Obstacle of(Obstacle o) {
    return new Obstacle(
        o.kind(),
        o.inWall()
            .map(
                w ->
                    new Obstacle.InWall(
                        mirror.of(w.face()), mirror.of(w.along()), w.width(), w.bottom(), w.top())),
        o.inVoid()
            .map(
                v ->
                    new Obstacle.InVoid(
                        mirror.of(v.at()),
                        v.place(),
                        mirror.swaps() ? v.northSouth() : v.eastWest(),
                        mirror.swaps() ? v.eastWest() : v.northSouth(),
                        v.height())),
        o.where());
  }

  private Conduit of(Conduit c) {
    return new Conduit(
        c.name(),
        mirror.of(c.from()),
        mirror.of(c.to()),
        c.insideDiameter(),
        c.way(),
        c.length(),
        c.kind(),
        c.outdoor(),
        c.where());
  }

  private Soffit of(Soffit s) {
    return new Soffit(
        s.name(),
        s.room(),
        s.face().map(mirror::of),
        s.along().map(mirror::of),
        s.length(),
        s.out(),
        s.drop(),
        s.cover(),
        s.where());
  }

  private Skirting of(Skirting s) {
    List<Side> sides = s.sides().stream().map(mirror::of).sorted().toList();
    return new Skirting(s.room(), sides, s.height(), s.where());
  }

  private Thing of(Thing t) {
    return new Thing(t.kind(), mirror.of(t.at()), t.width(), t.top(), t.where());
  }

  /** A tape runs eastward or northward. */
  private Tape of(Tape t) {
    boolean back = mirror.way().turnsBack(!t.from().side().runsEastWest());
    return back
        ? new Tape(mirror.of(t.to()), mirror.of(t.from()), t.distance(), t.where())
        : new Tape(mirror.of(t.from()), mirror.of(t.to()), t.distance(), t.where());
  }
}
