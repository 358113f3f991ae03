// Vertex colours under one lamp and the light that fills a rink, which comes from everywhere.

#import bevy_pbr::{mesh_functions, view_transformations::position_world_to_clip}

struct Paint {
    // What the colour's alpha is multiplied by.
    opacity: f32,
    // 1: shaded by the light, 0: drawn as it is.
    shaded: f32,
    // WebGL 2 takes uniforms of 16 bytes and their multiples.
    padding: vec2<f32>,
}

@group(#{MATERIAL_BIND_GROUP}) @binding(0) var<uniform> paint: Paint;

struct Vertex {
    @builtin(instance_index) instance: u32,
    @location(0) position: vec3<f32>,
    @location(1) normal: vec3<f32>,
    @location(5) color: vec4<f32>,
}

struct Drawn {
    @builtin(position) position: vec4<f32>,
    @location(0) normal: vec3<f32>,
    @location(1) color: vec4<f32>,
}

// Towards the lamp: (3, 5, 3), normalised.
const LAMP = vec3(0.4575, 0.7625, 0.4575);
const LAMP_LIGHT = vec3(0.86, 0.84, 0.82);
const RINK_LIGHT = vec3(0.48, 0.51, 0.54);

@vertex
fn vertex(in: Vertex) -> Drawn {
    let world_from_local = mesh_functions::get_world_from_local(in.instance);
    let world = mesh_functions::mesh_position_local_to_world(world_from_local, vec4(in.position, 1.0));
    var out: Drawn;
    out.position = position_world_to_clip(world.xyz);
    out.normal = mesh_functions::mesh_normal_local_to_world(in.normal, in.instance);
    out.color = vec4(in.color.rgb, in.color.a * paint.opacity);
    return out;
}

@fragment
fn fragment(in: Drawn) -> @location(0) vec4<f32> {
    let light = RINK_LIGHT + LAMP_LIGHT * max(dot(normalize(in.normal), LAMP), 0.0);
    return vec4(in.color.rgb * mix(vec3(1.0), light, paint.shaded), in.color.a);
}
