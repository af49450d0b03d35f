#pragma once

#include "app/pages/setup/entry_form.h"
#include "app/pages/setup/photo_rows.h"
#include "app/theme/theme.h"

#include <functional>

class QLabel;

namespace rig {

class PhotoBringing;
class Prompts;
class WrapLayout;

// The photos of one coupling, and a picture that waits to be kept as a further one.
class PhotosForm : public EntryForm<PhotoEntry>
{
    Q_OBJECT

public:
    // `prompts` outlives it.
    explicit PhotosForm(Prompts& prompts);

    using ImageOf = std::function<QImage(PhotoId)>;
    // Those that are there, newest first; each is decoded once while it stands here.
    void display(const QString& coupling, const std::vector<PhotoRow>& rows, const ImageOf& imageOf);
    void begin(const IdBytes& coupling, Day today);
    void setLook(const Look& look);

signals:
    void withdrawAsked(rig::PhotoId photo, const QString& reason);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Seen
    {
        PhotoRow row;
        QImage picture;
    };

    void addTile(const Seen& seen, int index);
    void enlarge(const Seen& seen);
    void askWithdraw(const Seen& seen);
    bool pastes(const QKeyEvent& event);
    void explainKind();
    std::optional<PhotoOf> kindChosen() const;

    Prompts& m_prompts;
    Look m_look;
    QString m_coupling;
    std::vector<Seen> m_seen;
    QWidget* m_strip = nullptr;
    WrapLayout* m_tiles = nullptr;
    QLabel* m_none = nullptr;
    PhotoBringing* m_bringing = nullptr;
    QComboBox* m_kind = nullptr;
    QLabel* m_caution = nullptr;
};

} // namespace rig
