#include "app/pages/setup/gauge_form.h"

#include "app/wording/formats.h"
#include "app/wording/gauge_words.h"
#include "app/wording/setup_words.h"
#include "core/measure/size_list.h"

#include <QComboBox>
#include <QLineEdit>

namespace rig {

GaugeForm::GaugeForm(QWidget* parent) : Form{SetUpWords::saveWithKey(), true, parent}
{
    m_name = addLine({"gaugeName", GaugeWords::name(), GaugeWords::nameHint(), Field::GaugeName});
    m_kind = addChoice({"gaugeKind", GaugeWords::kind(), {}, {}});
    m_sizes = addLine({"sizes", GaugeWords::sizes(), GaugeWords::sizesHint(), Field::Sizes}, Width::Whole);
    m_resolution =
        addLine({"resolution", GaugeWords::resolution(), GaugeWords::resolutionHint(), Field::Resolution},
                Width::Whole);
    m_tolerance =
        addLine({"tolerance", GaugeWords::tolerance(), GaugeWords::toleranceHint(), Field::Tolerance});
    m_note = addLine({"gaugeNote", GaugeWords::note(), {}, {}});
    for (const GaugeKind kind : {GaugeKind::Leaves, GaugeKind::Pins, GaugeKind::Taper})
        m_kind->addItem(GaugeWords::kindName(kind));
    connect(m_kind, &QComboBox::currentIndexChanged, this, &GaugeForm::showKind);
    connect(m_sizes, &QLineEdit::textChanged, this, &GaugeForm::echoSizes);
    showKind();
}

void GaugeForm::showKind()
{
    const bool taper = entry().kind == GaugeKind::Taper;
    setFieldVisible(m_sizes, !taper);
    setFieldVisible(m_resolution, taper);
}

// What was understood, while it is typed: a misread list is seen before it is saved.
void GaugeForm::echoSizes()
{
    const SizeListEntry typed = parseSizeList(m_sizes->text().toStdString());
    const auto* sizes = std::get_if<std::vector<Gap>>(&typed);
    if (!sizes)
        return setHint(m_sizes, GaugeWords::sizesHint());
    const Formats formats;
    setHint(m_sizes, GaugeWords::sizesRead(static_cast<int>(sizes->size()), formats.gap(sizes->front()),
                                           formats.gap(sizes->back())));
}

GaugeEntry GaugeForm::entry() const
{
    return {m_name->text(),      static_cast<GaugeKind>(m_kind->currentIndex()),
            m_sizes->text(),     m_resolution->text(),
            m_tolerance->text(), m_note->text()};
}

void GaugeForm::setEntry(const GaugeEntry& entry)
{
    m_name->setText(entry.name);
    m_kind->setCurrentIndex(static_cast<int>(entry.kind));
    m_sizes->setText(entry.sizes);
    m_resolution->setText(entry.resolution);
    m_tolerance->setText(entry.tolerance);
    m_note->setText(entry.note);
}

} // namespace rig
