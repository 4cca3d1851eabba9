// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/bcf_xml.h"

#include <array>
#include <charconv>
#include <cmath>
#include <pugixml.hpp>

#include "provisions/xml_text.h"

namespace seamward {

namespace {

struct Text : pugi::xml_writer {
    std::string bytes;
    void write(const void* data, std::size_t size) override { bytes.append(static_cast<const char*>(data), size); }
};

std::string written(pugi::xml_document& document) {
    pugi::xml_node declaration = document.prepend_child(pugi::node_declaration);
    declaration.append_attribute("version") = "1.0";
    declaration.append_attribute("encoding") = "UTF-8";
    Text text;
    document.save(text, " ", pugi::format_default, pugi::encoding_utf8);
    return text.bytes;
}

void add(pugi::xml_node to, const char* name, const std::string& text) {
    to.append_child(name).append_child(pugi::node_pcdata).set_value(text.c_str());
}

void set(pugi::xml_node node, const char* name, const std::string& text) { node.append_attribute(name) = text.c_str(); }

/// The shortest text that reads back as the number, whatever the language of the machine.
std::string number(double value) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value == 0 ? 0 : value).ptr;
    return {text.data(), end};
}

/// Micrometers for places and billionths for directions: what is beyond is noise of sums.
constexpr double place_steps = 1e6, direction_steps = 1e9;

void add(pugi::xml_node to, const char* name, double x, double y, double z, double steps) {
    pugi::xml_node node = to.append_child(name);
    add(node, "X", number(std::round(x * steps) / steps));
    add(node, "Y", number(std::round(y * steps) / steps));
    add(node, "Z", number(std::round(z * steps) / steps));
}

void add(pugi::xml_node to, const char* name, const Point& at) { add(to, name, at.x, at.y, at.z, place_steps); }
void add(pugi::xml_node to, const char* name, Vector toward) { add(to, name, toward.x, toward.y, toward.z, direction_steps); }

void add_words(pugi::xml_node to, const char* type, const std::vector<std::string>& words) {
    if (words.empty()) return;
    pugi::xml_node simple = to.append_child("xs:simpleType");
    set(simple, "name", type);
    pugi::xml_node restriction = simple.append_child("xs:restriction");
    set(restriction, "base", type);
    for (const std::string& word : words) set(restriction.append_child("xs:enumeration"), "value", xml_line(word));
}

void add_components(pugi::xml_node view, const BcfTopic& topic) {
    pugi::xml_node components = view.append_child("Components");
    // Rooms and openings of a model are bodies that would hide what the picture is of.
    pugi::xml_node hints = components.append_child("ViewSetupHints");
    for (const char* name : {"SpacesVisible", "SpaceBoundariesVisible", "OpeningsVisible"}) set(hints, name, "false");
    if (!topic.selected.empty()) {
        pugi::xml_node selection = components.append_child("Selection");
        for (const BcfComponent& part : topic.selected) {
            pugi::xml_node component = selection.append_child("Component");
            if (!part.global_id.empty()) {
                set(component, "IfcGuid", part.global_id);
            } else {
                add(component, "OriginatingSystem", "Seamward");
                add(component, "AuthoringToolId", xml_line(part.id));
            }
        }
    }
    set(components.append_child("Visibility"), "DefaultVisibility", "true");
}

void add_camera(pugi::xml_node view, const Camera& camera) {
    pugi::xml_node node = view.append_child("PerspectiveCamera");
    add(node, "CameraViewPoint", camera.from);
    add(node, "CameraDirection", camera.toward);
    add(node, "CameraUpVector", camera.up);
    add(node, "FieldOfView", number(Camera::field_of_view));
}

}  // namespace

std::string bcf_version_xml() {
    pugi::xml_document document;
    pugi::xml_node version = document.append_child("Version");
    set(version, "VersionId", "2.1");
    add(version, "DetailedVersion", "2.1");
    return written(document);
}

std::string bcf_project_xml(const std::string& guid, const std::string& name) {
    pugi::xml_document document;
    pugi::xml_node top = document.append_child("ProjectExtension");
    pugi::xml_node project = top.append_child("Project");
    set(project, "ProjectId", guid);
    add(project, "Name", xml_line(name));
    add(top, "ExtensionSchema", bcf_words_file);
    return written(document);
}

std::string bcf_words_xml(const BcfWords& words) {
    pugi::xml_document document;
    pugi::xml_node schema = document.append_child("xs:schema");
    set(schema, "xmlns:xs", "http://www.w3.org/2001/XMLSchema");
    pugi::xml_node redefine = schema.append_child("xs:redefine");
    set(redefine, "schemaLocation", "markup.xsd");
    add_words(redefine, "TopicType", words.types);
    add_words(redefine, "TopicStatus", words.statuses);
    add_words(redefine, "TopicLabel", words.labels);
    add_words(redefine, "Priority", words.priorities);
    return written(document);
}

std::string bcf_markup_xml(const BcfTopic& topic, std::size_t index, const BcfOrigin& origin) {
    pugi::xml_document document;
    pugi::xml_node markup = document.append_child("Markup");
    if (!origin.model.empty()) add(markup.append_child("Header").append_child("File"), "Filename", xml_line(origin.model));
    pugi::xml_node node = markup.append_child("Topic");
    set(node, "Guid", topic.guid);
    set(node, "TopicType", xml_line(topic.type));
    set(node, "TopicStatus", xml_line(topic.status));
    add(node, "Title", xml_line(topic.title));
    add(node, "Priority", xml_line(topic.priority));
    add(node, "Index", std::to_string(index));
    for (const std::string& label : topic.labels) add(node, "Labels", xml_line(label));
    add(node, "CreationDate", origin.moment);
    add(node, "CreationAuthor", xml_line(origin.author));
    add(node, "Description", xml_lines(topic.description));
    if (topic.has_view() || !topic.snapshot.empty()) {
        pugi::xml_node view = markup.append_child("Viewpoints");
        set(view, "Guid", topic.view_guid);
        if (topic.has_view()) add(view, "Viewpoint", bcf_view_file);
        if (!topic.snapshot.empty()) add(view, "Snapshot", bcf_snapshot_file);
    }
    return written(document);
}

std::string bcf_view_xml(const BcfTopic& topic) {
    pugi::xml_document document;
    pugi::xml_node view = document.append_child("VisualizationInfo");
    set(view, "Guid", topic.view_guid);
    add_components(view, topic);
    if (topic.camera) add_camera(view, *topic.camera);
    if (!topic.lines.empty()) {
        pugi::xml_node lines = view.append_child("Lines");
        for (const auto& [from, to] : topic.lines) {
            pugi::xml_node line = lines.append_child("Line");
            add(line, "StartPoint", from);
            add(line, "EndPoint", to);
        }
    }
    if (topic.camera && topic.camera->cut) {
        pugi::xml_node plane = view.append_child("ClippingPlanes").append_child("ClippingPlane");
        add(plane, "Location", topic.camera->cut->at);
        add(plane, "Direction", topic.camera->cut->toward);
    }
    return written(document);
}

}  // namespace seamward
